namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One thing that fits.</summary>
internal sealed record CompletionItem(
    string Label,
    int? Kind = null,
    string? Detail = null,
    MarkupContent? Documentation = null,
    string? SortText = null,
    string? FilterText = null,
    int? InsertTextFormat = null,
    TextEdit? TextEdit = null);
