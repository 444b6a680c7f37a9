namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Lines that can be folded.</summary>
internal sealed record FoldingRange(int StartLine, int EndLine, string? Kind = null);
