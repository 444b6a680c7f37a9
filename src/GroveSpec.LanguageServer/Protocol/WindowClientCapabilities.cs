namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the editor's window can do.</summary>
internal sealed record WindowClientCapabilities(bool? WorkDoneProgress = null);
