namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whether only what changed can be asked for.</summary>
internal sealed record SemanticTokensFullDelta(bool? Delta = null);
