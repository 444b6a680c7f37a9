using System.Collections.Immutable;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Surveying;

/// <summary>A planting with every trunk where a survey puts it, and what hangs on nothing known set beside it.</summary>
/// <param name="State">The planting to draw; a trunk with two places stands at one and is removed at the other.</param>
/// <param name="Others">Those second places.</param>
/// <param name="Apart">The trunks of each part that is set beside.</param>
/// <param name="Ellipses">Where each place lies in nineteen cases of twenty, by the trunk's name.</param>
internal sealed record SurveyedPlan(
    PlantingState State, ImmutableHashSet<TrunkState> Others, ImmutableArray<ImmutableArray<TrunkState>> Apart, ImmutableArray<(TrunkState Trunk, ErrorEllipse Ellipse)> Ellipses)
{
    private const double BesideShare = 0.16;
    private const double BesideGroundShare = 0.5;
    private const double LeastBesideMillimetres = 30;

    /// <summary>Sets the trunks.</summary>
    /// <param name="state">The planting, as it was surveyed.</param>
    /// <param name="survey">The survey.</param>
    /// <returns>The plan.</returns>
    public static SurveyedPlan Of(PlantingState state, TapeSurvey survey)
    {
        var trunks = new List<TrunkState>();
        var others = ImmutableHashSet.CreateBuilder<TrunkState>(ReferenceEqualityComparer.Instance);
        var ellipses = ImmutableArray.CreateBuilder<(TrunkState Trunk, ErrorEllipse Ellipse)>();
        foreach (var found in survey.Trunks)
        {
            Set(found, found.Place, found.OtherPlace);
        }

        var apart = ImmutableArray.CreateBuilder<ImmutableArray<TrunkState>>();
        foreach (var freedom in survey.Freedoms.Where(freedom => freedom.Kind == SurveyFreedomKind.Apart))
        {
            var part = TapeSurvey.OfApart(state, freedom).Trunks.Where(trunk => trunk.Place is not null).ToList();
            if (part.Count < 2)
            {
                continue;
            }

            var from = trunks.Count;
            var shift = Beside(state, trunks, part);
            foreach (var found in part)
            {
                trunks.RemoveAll(trunk => trunk.Name == found.Name && trunk.Place is null);
                Set(found, Moved(found.Place!.Value, shift), null);
            }

            apart.Add([.. trunks.Where(trunk => part.Exists(found => found.Name == trunk.Name))]);
        }

        return new(state with { Trunks = [.. trunks] }, others.ToImmutable(), apart.ToImmutable(), ellipses.ToImmutable());

        void Set(SurveyedTrunk found, PlanPoint? place, PlanPoint? other)
        {
            var trunk = found.Trunk with { Place = place };
            trunks.Add(trunk);
            if (found.Ellipse is { } ellipse && ellipse.HalfLong > Length.Zero && place is not null)
            {
                ellipses.Add((trunk, ellipse));
            }

            if (other is not null)
            {
                var mirrored = found.Trunk with { Place = other, Presence = Presence.Removed };
                trunks.Add(mirrored);
                others.Add(mirrored);
            }
        }
    }

    /// <summary>By how much a part is moved so that it stands to the right of all that is drawn, its middle as far back as theirs.</summary>
    private static (double X, double Y) Beside(PlantingState state, List<TrunkState> drawn, List<SurveyedTrunk> part)
    {
        var points = drawn.Where(trunk => trunk.Place is not null).Select(trunk => Millimetres(trunk.Place!.Value)).ToList();
        if (state.Planting.Container is { } container)
        {
            points.AddRange(ContainerOutline.Of(container).Points.Select(Millimetres));
        }

        var own = part.Select(trunk => Millimetres(trunk.Place!.Value)).ToList();
        if (points.Count == 0)
        {
            return (0, 0);
        }

        var width = points.Max(point => point.X) - points.Min(point => point.X);
        var room = Math.Max(LeastBesideMillimetres, width * (state.Planting.Container is null ? BesideGroundShare : BesideShare));
        var thick = part.Max(trunk => trunk.Trunk.Diameter?.Value.Millimetres ?? 0);
        return (
            points.Max(point => point.X) + room + thick - own.Min(point => point.X),
            ((points.Max(point => point.Y) + points.Min(point => point.Y)) / 2) - ((own.Max(point => point.Y) + own.Min(point => point.Y)) / 2));
    }

    private static (double X, double Y) Millimetres(PlanPoint point) => (point.X.Millimetres, point.Y.Millimetres);

    private static PlanPoint Moved(PlanPoint point, (double X, double Y) by) => PlanPoint.FromMillimetres(point.X.Millimetres + by.X, point.Y.Millimetres + by.Y);
}
