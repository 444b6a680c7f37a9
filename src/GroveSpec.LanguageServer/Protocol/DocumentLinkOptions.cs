namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How links come.</summary>
internal sealed record DocumentLinkOptions(bool? ResolveProvider = null);
