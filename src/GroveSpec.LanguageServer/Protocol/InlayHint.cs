namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A note in the line.</summary>
internal sealed record InlayHint(
    Position Position,
    string Label,
    int? Kind = null,
    MarkupContent? Tooltip = null,
    bool? PaddingLeft = null,
    bool? PaddingRight = null);
