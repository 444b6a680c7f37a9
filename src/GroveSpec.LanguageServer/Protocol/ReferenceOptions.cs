namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How the server finds where a name stands.</summary>
internal sealed record ReferenceOptions(bool? WorkDoneProgress = null);
