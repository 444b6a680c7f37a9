namespace GroveSpec.LanguageServer.Protocol;

/// <summary>From which places selections grow.</summary>
internal sealed record SelectionRangeParams(TextDocumentIdentifier TextDocument, Position[] Positions);
