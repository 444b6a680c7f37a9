namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Where help with a statement is asked for.</summary>
internal sealed record SignatureHelpParams(TextDocumentIdentifier TextDocument, Position Position);
