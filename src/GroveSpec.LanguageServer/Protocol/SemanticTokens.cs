namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Five numbers a word, each counted from the word before.</summary>
internal sealed record SemanticTokens(int[] Data, string? ResultId = null);
