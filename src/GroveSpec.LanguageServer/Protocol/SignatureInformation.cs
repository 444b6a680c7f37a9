namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One form.</summary>
internal sealed record SignatureInformation(
    string Label,
    MarkupContent? Documentation = null,
    ParameterInformation[]? Parameters = null,
    int? ActiveParameter = null);
