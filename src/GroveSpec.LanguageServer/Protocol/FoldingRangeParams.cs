namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whose folds are asked for.</summary>
internal sealed record FoldingRangeParams(TextDocumentIdentifier TextDocument);
