namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One line of an outline.</summary>
internal sealed record DocumentSymbol(
    string Name,
    int Kind,
    Range Range,
    Range SelectionRange,
    string? Detail = null,
    int[]? Tags = null,
    DocumentSymbol[]? Children = null);
