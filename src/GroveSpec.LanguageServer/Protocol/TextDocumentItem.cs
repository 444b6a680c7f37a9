namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A document as it is opened.</summary>
internal sealed record TextDocumentItem(string Uri, string LanguageId, int Version, string Text);
