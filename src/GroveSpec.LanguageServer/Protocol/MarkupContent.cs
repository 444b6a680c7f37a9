namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A text in plain words or in Markdown.</summary>
internal sealed record MarkupContent(string Kind, string Value);
