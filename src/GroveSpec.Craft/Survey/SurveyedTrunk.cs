using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>A trunk and where the survey puts it.</summary>
/// <param name="Trunk">The trunk.</param>
/// <param name="Kind">How well its place is known.</param>
/// <param name="Place">Its place; null where the readings leave it free.</param>
/// <param name="OtherPlace">The other place of one of two; else null.</param>
/// <param name="Ellipse">Where it lies in nineteen cases of twenty, relative to the known places or to the chosen axes; null where it is known or free.</param>
/// <param name="CanBeWritten">Whether the place may be written into the file: found and not loose, or in chosen axes where the file names no place at all, so that any axes are as good.</param>
public sealed record SurveyedTrunk(TrunkState Trunk, SurveyedPlaceKind Kind, PlanPoint? Place, PlanPoint? OtherPlace, ErrorEllipse? Ellipse, bool CanBeWritten)
{
    /// <summary>Whether the readings hold the place so loosely that it tells little: it may lie five times as far off as a tape read by hand is right to, 10 mm in a pot (our own choice).</summary>
    public bool IsLoose { get; init; }

    /// <summary>The trunk's name.</summary>
    public string Name => Trunk.Name;
}
