using System.Diagnostics;
using CsCheck;
using GroveSpec.Craft.Composition;
using Xunit;

namespace GroveSpec.Craft.Tests.Composition;

public sealed class StandingTrunksTests
{
    private static HashSet<(int, int)> Pairs(StandingTrunks trunks) => [.. trunks.NeighbourPairs()];

    [Fact]
    public void A_trunk_between_two_others_parts_them()
    {
        var trunks = TestStand.OfPlaces((0, 0), (100, 0), (50, 5));
        Assert.Equal([(0, 2), (1, 2)], Pairs(trunks));
    }

    [Fact]
    public void A_trunk_on_the_very_circle_over_a_gap_does_not_part_it()
    {
        Assert.Contains((0, 1), Pairs(TestStand.OfPlaces((0, 0), (100, 0), (50, 50))));
        Assert.DoesNotContain((0, 1), Pairs(TestStand.OfPlaces((0, 0), (100, 0), (50, 49.999999))));
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
    public void Neighbours_agree_with_looking_at_every_pair_and_every_third()
    {
        Gen.Select(Gen.Int[-40, 40], Gen.Int[-40, 40]).Array[2, 40].Sample(places =>
        {
            // Within the 24 nearest that are looked at, as long as no heap is larger.
            var distinct = places.Distinct().ToArray();
            var trunks = TestStand.OfPlaces([.. distinct.Select(place => ((double)place.Item1, (double)place.Item2))]);
            var nearest = distinct.Select((one, index) => distinct.Where((_, other) => other != index).Min(other => Square(one, other))).Order().ToArray();
            var expected = new HashSet<(int, int)>();
            for (var one = 0; one < distinct.Length; one++)
            {
                for (var other = one + 1; other < distinct.Length; other++)
                {
                    var isFree = distinct.All(third => ((third.Item1 - distinct[one].Item1) * (third.Item1 - distinct[other].Item1)) + ((third.Item2 - distinct[one].Item2) * (third.Item2 - distinct[other].Item2)) >= 0);
                    var isNear = distinct.Length < 7 || 4 * Square(distinct[one], distinct[other]) <= 25 * nearest[(distinct.Length - 1) / 2];
                    if (isFree && isNear)
                    {
                        expected.Add((one, other));
                    }
                }
            }

            return distinct.Length < 2 || expected.SetEquals(Pairs(trunks));
        });

        static int Square((int, int) one, (int, int) other) => ((one.Item1 - other.Item1) * (one.Item1 - other.Item1)) + ((one.Item2 - other.Item2) * (one.Item2 - other.Item2));
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
    public void Ten_thousand_trunks_cost_about_as_much_however_they_stand()
    {
        // A quadratic search would take some hundred times as long; a factor of thirty against the scattered stand tells them apart on any machine.
        var random = new Random(3);
        var scattered = Enumerable.Range(0, 10_000).Select(_ => (random.NextDouble() * 5000, random.NextDouble() * 5000)).ToArray();
        var circle = Enumerable.Range(0, 10_000).Select(index => (5000 * Math.Cos(index * Math.PI / 5000), 5000 * Math.Sin(index * Math.PI / 5000))).ToArray();
        var heap = Enumerable.Repeat((3.0, 4.0), 10_000).ToArray();
        var half = scattered.Take(5_001).Concat(heap.Take(4_999)).ToArray();
        _ = Work(scattered);
        var usual = Enumerable.Range(0, 3).Min(_ => Work(scattered));
        Assert.All([circle, heap, half], places => Assert.True(Enumerable.Range(0, 3).Min(_ => Work(places)) < usual * 30));

        static long Work((double, double)[] places)
        {
            var trunks = TestStand.OfPlaces(places);
            var started = Stopwatch.GetTimestamp();
            _ = trunks.NeighbourPairs().Length + RodSearch.Find(trunks, 0.5).Length + Contacts.Find(trunks, false).Length;
            return Stopwatch.GetTimestamp() - started;
        }
    }
}
