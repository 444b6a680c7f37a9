namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Guides as a piece of SVG in the coordinates of the picture.</summary>
internal sealed record GuidesResult(int Version, string Svg);
