namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the editor would have.</summary>
internal sealed record FormattingOptions(int TabSize, bool InsertSpaces);
