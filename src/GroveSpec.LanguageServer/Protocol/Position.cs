namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A place in a text, both from 0; the character counts in the encoding that was agreed on.</summary>
internal sealed record Position(int Line, int Character);
