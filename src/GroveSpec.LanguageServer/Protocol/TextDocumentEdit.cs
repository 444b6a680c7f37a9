namespace GroveSpec.LanguageServer.Protocol;

/// <summary>The replacements in one document.</summary>
internal sealed record TextDocumentEdit(OptionalVersionedTextDocumentIdentifier TextDocument, TextEdit[] Edits);
