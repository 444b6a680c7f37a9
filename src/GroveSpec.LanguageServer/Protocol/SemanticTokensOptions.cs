namespace GroveSpec.LanguageServer.Protocol;

/// <summary>How words are classed.</summary>
internal sealed record SemanticTokensOptions(SemanticTokensLegend Legend, bool? Range = null, SemanticTokensFullDelta? Full = null);
