namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which document.</summary>
internal sealed record TextDocumentIdentifier(string Uri);
