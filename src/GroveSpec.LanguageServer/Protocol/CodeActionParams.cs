namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Where fixes are asked for.</summary>
internal sealed record CodeActionParams(TextDocumentIdentifier TextDocument, Range Range, CodeActionContext Context);
