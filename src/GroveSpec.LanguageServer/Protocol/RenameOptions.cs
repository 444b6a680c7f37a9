namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How names are changed.</summary>
internal sealed record RenameOptions(bool? PrepareProvider = null, bool? WorkDoneProgress = null);
