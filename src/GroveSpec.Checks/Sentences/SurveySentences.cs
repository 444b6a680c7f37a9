using System.Collections.Immutable;
using GroveSpec.Checks.Surveying;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Sentences;

/// <summary>Says in whole sentences what a tape survey found. Names stand in them as the file writes them.</summary>
public static class SurveySentences
{
    /// <summary>Where the trunks stand whose places were sought.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence for each, such as "G at 62.5, 76.7 mm, within 2.2 mm."; none where nothing was sought.</returns>
    public static ImmutableArray<string> Places(TapeSurvey survey, UnitSystem units) => [.. SurveyWords.Sought(survey).Select(trunk => $"{trunk.Name} {SurveyWords.Place(trunk, units)}.")];
}
