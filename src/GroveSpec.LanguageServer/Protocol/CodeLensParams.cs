namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whose lenses are asked for.</summary>
internal sealed record CodeLensParams(TextDocumentIdentifier TextDocument);
