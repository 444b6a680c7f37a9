using System.Collections.Immutable;
using CsCheck;
using GroveSpec.Craft.Stand;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Stand;

/// <summary>
/// Five stems in a window of 300 by 200, and a lattice of six by six: values computed with R 4.2.2 and spatstat, to which
/// Python's exact fractions agree; met to half of their last printed digit.
/// </summary>
public sealed class StandIndicesTests
{
    private const double Area = 300 * 200;

    private static readonly Length Perimeter = Length.FromMillimetres(2 * (300 + 200));

    private static readonly ImmutableArray<PlanPoint> FiveStems =
    [
        PlanPoint.FromMillimetres(40, 50),
        PlanPoint.FromMillimetres(110, 60),
        PlanPoint.FromMillimetres(150, 120),
        PlanPoint.FromMillimetres(220, 80),
        PlanPoint.FromMillimetres(260, 150),
    ];

    private static readonly ImmutableArray<Length> FiveDiameters = [.. new[] { 30.0, 22, 18, 12, 8 }.Select(Length.FromMillimetres)];

    private static readonly ImmutableArray<PlanPoint> Lattice = [.. Enumerable.Range(0, 36).Select(i => PlanPoint.FromMillimetres(i % 6, i / 6))];

    [Fact]
    public void Clark_and_Evans_of_five_stems_is_as_R_gives_it() => Assert.Equal(1.368494, ClarkEvansIndex.Naive(Mean(FiveStems), 5, Area), 5e-7);

    [Fact]
    public void Corrected_by_Donnelly_it_is_as_R_gives_it() => Assert.Equal(1.090463, ClarkEvansIndex.Donnelly(Mean(FiveStems), 5, Area, Perimeter), 5e-7);

    [Fact]
    public void Its_standard_score_is_as_R_gives_it() => Assert.Equal(1.576318, ClarkEvansIndex.StandardScore(Mean(FiveStems), 5, Area), 5e-7);

    [Fact]
    public void A_square_lattice_has_two_and_by_Donnelly_what_R_gives()
    {
        Assert.Equal(2.0, ClarkEvansIndex.Naive(Mean(Lattice), 36, 36), 5e-7);
        Assert.Equal(1.855823, ClarkEvansIndex.Donnelly(Mean(Lattice), 36, 36, Length.FromMillimetres(24)), 5e-7);
    }

    [Fact]
    public void A_hexagonal_lattice_has_the_greatest_index_there_is()
    {
        // spatstat's help on clarkevans: 2.1491 for a hexagonal pattern; each stem has a cell of √3/2.
        Assert.Equal(2.1491, ClarkEvansIndex.Naive(Length.FromMillimetres(1), 1000, 1000 * Math.Sqrt(3) / 2), 5e-5);
    }

    [Fact]
    public void The_uniform_angle_index_of_five_stems_is_as_R_gives_it() => Assert.Equal(0.70, UniformAngleIndex.Mean(FiveStems)!.Value, 5e-7);

    [Fact]
    public void Four_stems_have_no_uniform_angle_index() => Assert.Null(UniformAngleIndex.Mean(FiveStems[..4]));

    [Fact]
    public void Stems_at_one_place_have_no_angle_between_them() => Assert.Null(UniformAngleIndex.Mean([.. FiveStems, FiveStems[0]]));

    [Fact]
    public void Inside_a_lattice_no_angle_is_narrow()
    {
        // Only the middle of a cross of five has its four neighbours all round.
        ImmutableArray<PlanPoint> cross = [.. new[] { (0, 0), (10, 0), (-10, 0), (0, 10), (0, -10) }.Select(at => PlanPoint.FromMillimetres(at.Item1, at.Item2))];

        // Each of the other four sees three within a quarter turn: 45 + 45 degrees, then a wide way round to the first.
        Assert.Equal(4 * 3 / 20.0, UniformAngleIndex.Mean(cross)!.Value, 1e-12);
    }

    [Fact]
    public void Size_differentiation_of_five_stems_is_as_R_gives_it() => Assert.Equal(0.276364, SizeIndices.Differentiation(FiveStems, FiveDiameters)!.Value, 5e-7);

    [Fact]
    public void Dominance_of_five_stems_is_as_R_gives_it() => Assert.Equal([0, .25, .5, .75, 1], SizeIndices.Dominance(FiveStems, FiveDiameters));

    [Fact]
    public void Four_stems_have_no_four_neighbours() => Assert.Empty(SizeIndices.Dominance(FiveStems[..4], FiveDiameters[..4]));

    [Fact]
    public void One_stem_differs_from_no_other() => Assert.Null(SizeIndices.Differentiation(FiveStems[..1], FiveDiameters[..1]));

    [Fact]
    public void Stems_alike_do_not_differ_and_none_rules()
    {
        ImmutableArray<Length> alike = [.. Enumerable.Repeat(Length.FromMillimetres(9), 5)];
        Assert.Equal(0, SizeIndices.Differentiation(FiveStems, alike));
        Assert.All(SizeIndices.Dominance(FiveStems, alike), share => Assert.Equal(0, share));
        Assert.Equal(0, GiniCoefficient.OfBasalArea(alike)!.Value, 1e-12);
    }

    [Fact]
    public void Gini_of_diameters_and_of_basal_area_are_as_R_gives_them()
    {
        Assert.Equal(0.24, GiniCoefficient.Of([.. FiveDiameters.Select(diameter => diameter.Millimetres)])!.Value, 5e-7);
        Assert.Equal(0.420042, GiniCoefficient.OfBasalArea(FiveDiameters)!.Value, 5e-7);
    }

    [Fact]
    public void Gini_is_greatest_where_one_has_all_and_then_one_when_corrected_for_few()
    {
        Assert.Equal(0.8, GiniCoefficient.Of([0, 0, 0, 0, 3])!.Value, 1e-12);
        Assert.Equal(1, GiniCoefficient.ForFew(0.8, 5), 1e-12);
        Assert.Null(GiniCoefficient.Of([]));
        Assert.Null(GiniCoefficient.Of([0, 0]));
    }

    [Fact]
    public void No_index_leaves_its_bounds_and_turning_the_planting_changes_none() =>
        Gen.Select(Gen.Int[-500, 500], Gen.Int[-500, 500], Gen.Int[1, 90]).Array[6, 20].Sample(stems =>
        {
            var distinct = stems.DistinctBy(stem => (stem.Item1, stem.Item2)).ToArray();
            if (distinct.Length < 6)
            {
                return;
            }

            ImmutableArray<PlanPoint> places = [.. distinct.Select(stem => PlanPoint.FromMillimetres(stem.Item1, stem.Item2))];
            ImmutableArray<Length> sizes = [.. distinct.Select(stem => Length.FromMillimetres(stem.Item3))];
            Assert.InRange(UniformAngleIndex.Mean(places)!.Value, 0, 1);
            Assert.InRange(SizeIndices.Differentiation(places, sizes)!.Value, 0, 1);
            Assert.InRange(GiniCoefficient.OfBasalArea(sizes)!.Value, 0, (distinct.Length - 1.0) / distinct.Length);

            // A half turn keeps every distance, but not which of two at one distance is asked first.
            if (distinct.SelectMany((one, i) => distinct.Where((_, j) => j != i).Select(other => (i, Square(one, other)))).GroupBy(pair => pair).All(group => group.Count() == 1))
            {
                ImmutableArray<PlanPoint> turned = [.. places.Select(place => new PlanPoint(-place.X, -place.Y))];
                Assert.Equal(UniformAngleIndex.Mean(places)!.Value, UniformAngleIndex.Mean(turned)!.Value, 1e-12);
                Assert.Equal(SizeIndices.Dominance(places, sizes), SizeIndices.Dominance(turned, sizes));
            }

            static int Square((int X, int Y, int Size) one, (int X, int Y, int Size) other) => ((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y));
        });

    private static Length Mean(ImmutableArray<PlanPoint> places) => StandMeasures.MeanNearestDistance(places)!.Value;
}
