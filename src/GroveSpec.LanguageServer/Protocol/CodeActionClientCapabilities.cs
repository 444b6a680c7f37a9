namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How the editor takes fixes.</summary>
internal sealed record CodeActionClientCapabilities(ClientCodeActionResolveOptions? ResolveSupport = null, bool? DataSupport = null);
