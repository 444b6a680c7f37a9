namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>
/// A trunk of a picture: its name, the mark of its parts, whether it may be moved, a sentence about it, and where in the picture it is
/// taken hold of: at its centre in the plan, at its top from the front. It has no such place where the picture does not show it.
/// </summary>
internal sealed record DrawnTrunk(string Name, string Origin, bool IsFixed, string Summary, double? X, double? Y);
