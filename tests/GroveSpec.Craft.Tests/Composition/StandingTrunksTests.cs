using CsCheck;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Composition;

public sealed class StandingTrunksTests
{
    private static HashSet<(int, int)> Pairs(StandingTrunks trunks) => [.. trunks.NeighbourPairs];

    [Fact]
    public void A_trunk_on_the_way_between_two_others_parts_them()
    {
        var trunks = TestStand.OfPlaces((0, 0), (100, 0), (50, 2));
        Assert.Equal([(0, 2), (1, 2)], Pairs(trunks));
    }

    [Fact]
    public void A_line_that_touches_the_bark_of_a_third_trunk_is_parted_and_one_a_nanometre_off_is_not()
    {
        // All are 10 mm thick.
        Assert.DoesNotContain((0, 1), Pairs(TestStand.OfPlaces((0, 0), (100, 0), (50, 5))));
        Assert.Contains((0, 1), Pairs(TestStand.OfPlaces((0, 0), (100, 0), (50, 5.000001))));
        Assert.DoesNotContain((0, 1), Pairs(TestStand.OfPlaces((0, 0), (60, 80), (34, 37))));
        Assert.Contains((0, 1), Pairs(TestStand.OfPlaces((0, 0), (60, 80), (34.000001, 36.999999))));
    }

    [Fact]
    public void A_trunk_beside_or_behind_the_others_parts_nobody()
    {
        Assert.Equal([(0, 1), (0, 2), (1, 2)], Pairs(TestStand.OfPlaces((0, 0), (100, 0), (-20, 30))).Order());
        Assert.Contains((0, 1), Pairs(TestStand.OfPlaces((0, 0), (100, 0), (50, 20))));
    }

    [Fact]
    public void A_gap_is_open_until_a_third_trunk_stands_within_the_circle_over_it()
    {
        Assert.True(IsOpen(TestStand.OfPlaces((0, 0), (100, 0), (50, 50))));
        Assert.False(IsOpen(TestStand.OfPlaces((0, 0), (100, 0), (50, 49.999999))));

        static bool IsOpen(StandingTrunks trunks) => trunks.OpenGapsOf(0)[trunks.NeighboursOf(0).IndexOf(1)];
    }

    [Fact]
    public void From_seven_trunks_on_a_gap_of_two_and_a_half_times_the_median_is_the_longest_that_counts()
    {
        // Six trunks 40 mm apart in a crooked row, and one 100 mm from the last: nearest gaps 40 but for the last.
        (double, double)[] row = [(0, 0), (40, 0), (40, 40), (80, 40), (80, 80), (120, 80)];
        Assert.Contains((5, 6), Pairs(TestStand.OfPlaces([.. row, (220, 80)])));
        Assert.DoesNotContain((5, 6), Pairs(TestStand.OfPlaces([.. row, (220.000001, 80)])));
        Assert.Equal(40, TestStand.OfPlaces([.. row, (220, 80)]).MedianNearestGap.Millimetres);
        Assert.Equal(100, TestStand.OfPlaces([.. row, (220, 80)]).NeighbourReach.Millimetres);
    }

    [Fact]
    public void Under_seven_trunks_no_gap_is_too_long()
    {
        Assert.Contains((1, 2), Pairs(TestStand.OfPlaces((0, 0), (10, 0), (5000, 0))));
    }

    [Fact]
    public void The_mean_nearest_distance_agrees_with_the_worked_stand()
    {
        // Stems and mean NN 74.955507: reference values B, agreed by R and Python.
        var trunks = TestStand.OfPlaces((40, 50), (110, 60), (150, 120), (220, 80), (260, 150));
        Assert.Equal(74.955507, trunks.MeanNearestGap.Millimetres, 5e-7);
    }

    [Fact]
    public void Neighbours_and_open_gaps_agree_with_looking_at_every_pair_and_every_third()
    {
        Gen.Select(Gen.Int[-40, 40], Gen.Int[-40, 40], Gen.Int[0, 16]).Array[2, 40].Sample(stand =>
        {
            // Within the 24 nearest that are looked at, as long as no heap is larger.
            var all = stand.DistinctBy(trunk => (trunk.Item1, trunk.Item2)).ToArray();
            if (all.Length < 2)
            {
                return true;
            }

            var trunks = TestStand.Of([.. all.Select(trunk => new TrunkSection(PlanPoint.FromMillimetres(trunk.Item1, trunk.Item2), Length.FromMillimetres(trunk.Item3)))]);
            var nearest = all.Select((one, index) => all.Where((_, other) => other != index).Min(other => Square(one, other))).Order().ToArray();
            var expected = new HashSet<(int, int)>();
            var open = new HashSet<(int, int)>();
            for (var one = 0; one < all.Length; one++)
            {
                for (var other = one + 1; other < all.Length; other++)
                {
                    if ((all.Length < 7 || 4 * Square(all[one], all[other]) <= 25 * nearest[(all.Length - 1) / 2])
                        && !all.Any(third => IsOnTheWay(third, all[one], all[other])))
                    {
                        expected.Add((one, other));
                        _ = all.All(third => Dot(third, all[one], all[other]) >= 0) && open.Add((one, other));
                    }
                }
            }

            var pairs = trunks.NeighbourPairs;
            return expected.SetEquals(pairs) && open.SetEquals(pairs.Where(pair => trunks.OpenGapsOf(pair.First)[trunks.NeighboursOf(pair.First).IndexOf(pair.Second)]));
        });

        static int Square((int, int, int) one, (int, int, int) other) => ((one.Item1 - other.Item1) * (one.Item1 - other.Item1)) + ((one.Item2 - other.Item2) * (one.Item2 - other.Item2));

        static int Dot((int, int, int) at, (int, int, int) one, (int, int, int) other) => ((at.Item1 - one.Item1) * (at.Item1 - other.Item1)) + ((at.Item2 - one.Item2) * (at.Item2 - other.Item2));

        static bool IsOnTheWay((int, int, int) third, (int, int, int) one, (int, int, int) other)
        {
            long twice = 2L * (((other.Item1 - one.Item1) * (third.Item2 - one.Item2)) - ((other.Item2 - one.Item2) * (third.Item1 - one.Item1)));
            var square = Square(one, other);
            return third != one && third != other && Square(third, one) < square && Square(third, other) < square
                && Dot(one, third, other) > 0 && Dot(other, third, one) > 0
                && twice * twice <= (long)third.Item3 * third.Item3 * square;
        }
    }

    [Fact]
    public void Order_place_and_a_quarter_turn_do_not_change_who_is_a_neighbour()
    {
        Gen.Select(Gen.Int[-40, 40], Gen.Int[-40, 40]).Array[8, 30].Sample(places =>
        {
            var distinct = places.Distinct().ToArray();
            var expected = Pairs(TestStand.OfPlaces([.. distinct.Select(place => ((double)place.Item1, (double)place.Item2))]));
            var turned = Pairs(TestStand.OfPlaces([.. distinct.Select(place => (900_000.5 - place.Item2, -700_000.25 + place.Item1))]));
            var reversed = Pairs(TestStand.OfPlaces([.. distinct.Reverse().Select(place => ((double)place.Item1, (double)place.Item2))]));
            return expected.SetEquals(turned)
                && expected.SetEquals(reversed.Select(pair => (distinct.Length - 1 - pair.Item2, distinct.Length - 1 - pair.Item1)));
        });
    }

    [Fact]
    public void Ten_thousand_trunks_take_some_hundred_looks_each_however_they_stand()
    {
        // Work is counted, not timed: the trunks looked at in search of near ones, and the pairs of neighbours that are
        // held against each other. A search among all would look at 10,000 for each.
        var random = new Random(3);
        var scattered = Enumerable.Range(0, 10_000).Select(_ => (random.NextDouble() * 5000, random.NextDouble() * 5000)).ToArray();
        var circle = Enumerable.Range(0, 10_000).Select(index => (5000 * Math.Cos(index * Math.PI / 5000), 5000 * Math.Sin(index * Math.PI / 5000))).ToArray();
        var lattice = Enumerable.Range(0, 10_000).Select(index => (index % 100 * 50.0, index / 100 * 50.0)).ToArray();
        var heap = Enumerable.Repeat((3.0, 4.0), 10_000).ToArray();
        var half = scattered.Take(5_001).Concat(heap.Take(4_999)).ToArray();
        Assert.All([scattered, circle, lattice, heap, half], places => Assert.InRange(Work(places), 10_000, 10_000 * 1_000));

        static long Work((double, double)[] places)
        {
            var trunks = TestStand.OfPlaces(places);
            _ = trunks.NeighbourPairs.Length + RodSearch.Find(trunks, 0.5).Length + Contacts.Find(trunks, false).Length + trunks.MeanNearestGap.Nanometres;
            var work = trunks.Looked + Enumerable.Range(0, trunks.Count).Sum(index => (long)trunks.NeighboursOf(index).Length * trunks.NeighboursOf(index).Length);
            TestContext.Current.TestOutputHelper?.WriteLine($"{work / trunks.Count} looked at for each of {trunks.Count} trunks");
            return work;
        }
    }
}
