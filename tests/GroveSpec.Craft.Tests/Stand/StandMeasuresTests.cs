using System.Collections.Immutable;
using CsCheck;
using GroveSpec.Craft.Stand;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Stand;

public sealed class StandMeasuresTests
{
    // Computed with R 4.2.2 and spatstat for these stems: mean nearest distance 74.955507.
    private static readonly ImmutableArray<PlanPoint> FiveStems =
    [
        PlanPoint.FromMillimetres(40, 50),
        PlanPoint.FromMillimetres(110, 60),
        PlanPoint.FromMillimetres(150, 120),
        PlanPoint.FromMillimetres(220, 80),
        PlanPoint.FromMillimetres(260, 150),
    ];

    [Fact]
    public void Mean_nearest_distance_of_five_stems_is_the_one_that_R_gives() =>
        Assert.Equal(74.955507, StandMeasures.MeanNearestDistance(FiveStems)!.Value.Millimetres, 6);

    [Fact]
    public void In_a_square_lattice_each_stem_is_one_step_from_the_next() =>
        Assert.Equal(
            Length.FromMillimetres(10),
            StandMeasures.MeanNearestDistance([.. Enumerable.Range(0, 36).Select(i => PlanPoint.FromMillimetres(10 * (i % 6), 10 * (i / 6)))]));

    [Fact]
    public void One_stem_has_no_nearest() => Assert.Null(StandMeasures.MeanNearestDistance([PlanPoint.Origin]));

    [Fact]
    public void Stems_at_one_place_are_at_no_distance() =>
        Assert.Equal(Length.Zero, StandMeasures.MeanNearestDistance([PlanPoint.Origin, PlanPoint.Origin]));

    [Fact]
    public void Looking_at_every_pair_gives_the_same() =>
        Gen.Select(Gen.Int[-500, 500], Gen.Int[-500, 500]).Array[2, 40].Sample(pairs =>
        {
            ImmutableArray<PlanPoint> places = [.. pairs.Select(pair => PlanPoint.FromMillimetres(pair.Item1, pair.Item2))];
            var slow = places.Select((from, i) => places.Where((_, j) => j != i).Min(to => from.DistanceTo(to).Millimetres)).Average();
            return Math.Abs(slow - StandMeasures.MeanNearestDistance(places)!.Value.Millimetres) < 1e-5;
        });

    [Fact]
    public void Mean_diameter_counts_each_stem_once() =>
        Assert.Equal(
            Length.FromMillimetres(18),
            StandMeasures.MeanDiameter([.. new[] { 30.0, 22, 18, 12, 8 }.Select(Length.FromMillimetres)]));

    [Fact]
    public void No_stems_have_no_mean_diameter() => Assert.Null(StandMeasures.MeanDiameter([]));
}
