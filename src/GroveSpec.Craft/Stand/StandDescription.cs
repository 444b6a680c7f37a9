using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Stand;

/// <summary>How a planting stands in forestry's numbers, each beside what chance gives.</summary>
public sealed record StandDescription
{
    /// <summary>The trunks that stand and whose place is known, in the order of the file: those whose spacing is described.</summary>
    public required ImmutableArray<TrunkState> Stems { get; init; }

    /// <summary>Those of them whose thickness is known: those whose sizes are described.</summary>
    public required ImmutableArray<TrunkState> Sized { get; init; }

    /// <summary>Trunks that stand and whose place is not known.</summary>
    public required ImmutableArray<TrunkState> Unplaced { get; init; }

    /// <summary>Those of <see cref="Stems"/> whose middle is outside their container: chance scatters none there, so that the spacing of all cannot be laid beside it.</summary>
    public required ImmutableArray<TrunkState> Outside { get; init; }

    /// <summary>The ground over which chance scatters.</summary>
    public required StandGround Ground { get; init; }

    /// <summary>The nearest of each stem and how far it is, in the order of <see cref="Stems"/>; empty for fewer than two.</summary>
    public required ImmutableArray<NearestOfStem> Nearest { get; init; }

    /// <summary>The mean of those distances; null for fewer than two stems.</summary>
    public required Length? MeanNearest { get; init; }

    /// <summary>The index of Clark and Evans without correction; null where the corrected one is.</summary>
    public required double? UncorrectedClarkEvans { get; init; }

    /// <summary>The standard score of that index, by the published formula; null where the index is.</summary>
    public required double? ClarkEvansScore { get; init; }

    /// <summary>The Gini coefficient of the basal area without the correction for few stems; null where no thickness is known.</summary>
    public required double? UncorrectedBasalAreaGini { get; init; }

    /// <summary>The Gini coefficient of the thicknesses, likewise without correction.</summary>
    public required double? DiameterGini { get; init; }

    /// <summary>For each of <see cref="Sized"/> the share of its four nearest that are thicker; empty for fewer than five.</summary>
    public required ImmutableArray<double> Dominance { get; init; }

    /// <summary>Every index once, in the order of their kinds.</summary>
    public required ImmutableArray<StandIndex> Indices { get; init; }

    /// <summary>Describes a planting.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <returns>The description; the same for the same trunks in any order of the file, but for the order of its lists.</returns>
    public static StandDescription Of(PlantingState state)
    {
        ImmutableArray<TrunkState> stems = [.. state.Standing];
        ImmutableArray<TrunkState> sized = [.. stems.Where(trunk => trunk.Diameter is not null)];
        var ground = StandGround.Of(state);
        var simulation = new StandSimulation(ground, [.. InOrder(stems)], [.. InOrder(sized)]);
        ImmutableArray<PlanPoint> places = [.. stems.Select(trunk => trunk.Place!.Value)];
        var mean = StandMeasures.MeanNearestDistance(places);
        var indices = simulation.Indices();
        var hasSpacing = indices[(int)StandIndexKind.ClarkEvans].Value is not null;
        ImmutableArray<Length> diameters = [.. sized.Select(trunk => trunk.Diameter!.Value.Value)];
        return new StandDescription
        {
            Stems = stems,
            Sized = sized,
            Unplaced = [.. state.Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: null })],
            Outside = [.. stems.Where(stem => !ground.Holds(stem.Place!.Value))],
            Ground = ground,
            Nearest = NearestOf(stems),
            MeanNearest = mean,
            UncorrectedClarkEvans = hasSpacing ? ClarkEvansIndex.Naive(mean!.Value, stems.Length, ground.AreaInSquareMillimetres) : null,
            ClarkEvansScore = hasSpacing ? ClarkEvansIndex.StandardScore(mean!.Value, stems.Length, ground.AreaInSquareMillimetres) : null,
            UncorrectedBasalAreaGini = GiniCoefficient.OfBasalArea(diameters),
            DiameterGini = GiniCoefficient.Of([.. diameters.Select(diameter => diameter.Millimetres)]),
            Dominance = SizeIndices.Dominance([.. sized.Select(trunk => trunk.Place!.Value)], diameters),
            Indices = indices,
        };
    }

    /// <summary>One index.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>The index.</returns>
    public StandIndex Index(StandIndexKind kind) => Indices[(int)kind];

    private static IEnumerable<TrunkState> InOrder(ImmutableArray<TrunkState> trunks) =>
        trunks.OrderBy(trunk => trunk.Place!.Value.X).ThenBy(trunk => trunk.Place!.Value.Y).ThenBy(trunk => trunk.Diameter?.Value ?? Length.Zero);

    private static ImmutableArray<NearestOfStem> NearestOf(ImmutableArray<TrunkState> stems)
    {
        if (stems.Length < 2)
        {
            return [];
        }

        var nearest = new NearestStems([.. stems.Select(stem => stem.Place!.Value.X.Millimetres)], [.. stems.Select(stem => stem.Place!.Value.Y.Millimetres)]);
        return [.. stems.Select((stem, index) => new NearestOfStem(stem, stems[nearest.Of(index)[0]], stem.Place!.Value.DistanceTo(stems[nearest.Of(index)[0]].Place!.Value)))];
    }
}
