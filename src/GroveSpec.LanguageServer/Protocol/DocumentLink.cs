namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A run of text that leads to a file.</summary>
internal sealed record DocumentLink(Range Range, string? Target = null, string? Tooltip = null);
