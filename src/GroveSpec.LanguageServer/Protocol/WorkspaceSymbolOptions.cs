namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How the server finds names in all plantings.</summary>
internal sealed record WorkspaceSymbolOptions(bool? WorkDoneProgress = null);
