namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which document, and which of its texts.</summary>
internal sealed record VersionedTextDocumentIdentifier(string Uri, int Version);
