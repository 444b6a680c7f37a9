using System.Collections.Immutable;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Trunks;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Checks.Moving;

/// <summary>Writes the places that a survey found into the text.</summary>
public static class SurveyedPlaces
{
    private const double NanometresOfAStep = 10_000;

    /// <summary>The edits: an <c>at</c> behind the name of each trunk whose place may be written, to a hundredth of a millimetre, and nothing else. A trunk whose line has a place that could not be understood is left alone, since a second one would hide that.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="tree">The tree of the planting's file.</param>
    /// <param name="origins">Where its facts stand.</param>
    /// <param name="units">The units to write in.</param>
    /// <returns>The edits in the order of the text; empty where nothing may be written.</returns>
    public static ImmutableArray<TextEdit> Edits(TapeSurvey survey, SyntaxTree tree, IOriginTable origins, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(tree);
        ArgumentNullException.ThrowIfNull(origins);
        return
        [
            .. survey.Trunks
                .Where(trunk => trunk is { CanBeWritten: true, Place: not null } && !SaysAPlace(trunk.Trunk.Trunk, tree, origins))
                .Select(trunk =>
                {
                    var name = origins.Locate(trunk.Trunk.Trunk.Origin);
                    return new TextEdit(name with { Span = new(name.Span.End, 0) }, "   " + PlaceWording.Say(Rounded(trunk.Place!.Value), units));
                })
                .OrderBy(edit => edit.Place.Span.Start),
        ];
    }

    private static bool SaysAPlace(Trunk trunk, SyntaxTree tree, IOriginTable origins)
    {
        var statement = origins.StatementOf(trunk.Origin);
        return origins.Locate(trunk.Origin.Part("at")) != origins.Locate(trunk.Origin)
            || tree.Problems.Any(problem => problem.Span.Start <= statement.Span.End && problem.Span.End >= statement.Span.Start);
    }

    private static PlanPoint Rounded(PlanPoint place) => new(Rounded(place.X), Rounded(place.Y));

    private static Length Rounded(Length length) => new((long)(Math.Round(length.Nanometres / NanometresOfAStep, MidpointRounding.AwayFromZero) * NanometresOfAStep));
}
