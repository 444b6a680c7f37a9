namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A run of text and the next larger one.</summary>
internal sealed record SelectionRange(Range Range, SelectionRange? Parent = null);
