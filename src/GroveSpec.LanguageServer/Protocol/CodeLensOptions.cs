namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How lenses come.</summary>
internal sealed record CodeLensOptions(bool? ResolveProvider = null);
