namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One change of them.</summary>
internal sealed record SemanticTokensEdit(int Start, int DeleteCount, int[]? Data = null);
