using System.Collections.Immutable;

namespace GroveSpec.Craft.Survey;

/// <summary>Something that the readings leave free.</summary>
/// <param name="Kind">What.</param>
/// <param name="Trunks">The trunks that it is about, in the order of the file.</param>
/// <param name="About">Of a turn the trunk that all turns about; else null.</param>
public sealed record SurveyFreedom(SurveyFreedomKind Kind, ImmutableArray<string> Trunks, string? About = null);
