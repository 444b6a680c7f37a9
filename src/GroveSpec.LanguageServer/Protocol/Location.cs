namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A run of text in a document.</summary>
internal sealed record Location(string Uri, Range Range);
