namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Where notes in the line are asked for.</summary>
internal sealed record InlayHintParams(TextDocumentIdentifier TextDocument, Range Range);
