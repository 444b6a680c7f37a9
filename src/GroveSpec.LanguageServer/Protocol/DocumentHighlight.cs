namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A use of the name under the caret.</summary>
internal sealed record DocumentHighlight(Range Range, int? Kind = null);
