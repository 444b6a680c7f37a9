namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which document's findings are asked for.</summary>
internal sealed record DocumentDiagnosticParams(TextDocumentIdentifier TextDocument, string? Identifier = null, string? PreviousResultId = null);
