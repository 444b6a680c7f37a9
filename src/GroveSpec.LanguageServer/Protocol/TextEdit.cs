namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A replacement in a document.</summary>
internal sealed record TextEdit(Range Range, string NewText);
