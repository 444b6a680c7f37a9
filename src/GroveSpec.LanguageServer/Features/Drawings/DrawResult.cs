namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>A picture of a text: a whole SVG document, where what it shows is stated, its trunks, and in the timeline its tasks.</summary>
internal sealed record DrawResult(int Version, string Svg, string Title, DrawnPlace[] Places, DrawnTrunk[] Trunks, DrawnTask[] Tasks);
