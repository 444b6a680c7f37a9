namespace GroveSpec.LanguageServer.Protocol;

/// <summary>The names of classes, by number.</summary>
internal sealed record SemanticTokensLegend(string[] TokenTypes, string[] TokenModifiers);
