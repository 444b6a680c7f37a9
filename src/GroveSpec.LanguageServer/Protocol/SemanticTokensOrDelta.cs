namespace GroveSpec.LanguageServer.Protocol;

/// <summary>All words of a document, or what changed of them.</summary>
internal sealed record SemanticTokensOrDelta(string? ResultId = null, int[]? Data = null, SemanticTokensEdit[]? Edits = null);
