namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Since which answer.</summary>
internal sealed record SemanticTokensDeltaParams(TextDocumentIdentifier TextDocument, string PreviousResultId);
