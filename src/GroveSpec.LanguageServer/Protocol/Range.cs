namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A run of text, its end not included.</summary>
internal sealed record Range(Position Start, Position End);
