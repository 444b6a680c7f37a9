namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What is known of a place.</summary>
internal sealed record Hover(MarkupContent Contents, Range? Range = null);
