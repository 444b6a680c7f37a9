using GroveSpec.LanguageServer.Features.Drawings;

namespace GroveSpec.LanguageServer.Features.Deciding;

/// <summary>What there is to choose from: sentences, pictures as whole SVG documents, the choices with their edits, what can be asked otherwise, and where what the pictures show is stated.</summary>
internal sealed record DecideResult(int Version, string Title, string[] Says, string? Picture, DecideWay[] Ways, string[] Notes, DecideField[] Fields, DrawnPlace[] Places);
