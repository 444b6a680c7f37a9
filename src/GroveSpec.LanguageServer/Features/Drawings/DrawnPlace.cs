using Range = GroveSpec.LanguageServer.Protocol.Range;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Where what a part of a picture shows is stated: the whole statement, and its name.</summary>
internal sealed record DrawnPlace(string Origin, Range Range, Range Selection);
