using System.Diagnostics;
using GroveSpec.Checks.Ground;
using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Checks.Tests.Ground;

/// <summary>Free ground against limits worked out by hand, against its own test of places, and against the checks after a spot is written.</summary>
public class FreeGroundTests
{
    // Between two trunks of its own thickness the closeness of a newcomer h off the line is h / 2r.
    [Theory]
    [InlineData("three-in-line", "trunk A at -100, 0 mm diameter 20 mm\ntrunk B at 100, 0 mm diameter 20 mm", 20, 0, 10, 0, 10.000001)]

    // Both radii together, 12 + 8 mm.
    [InlineData("touching", "trunk A at 0, 0 mm diameter 24 mm", 16, 20, 0, 20.000001, 0)]

    // From the bark, 10 mm thick on that side, to the rim at 300 mm.
    [InlineData("near-rim", "trunk A at 0, 0 mm diameter 24 mm", 20, 280.000001, 100, 280, 100)]
    [InlineData("off-container", "trunk A at 0, 0 mm diameter 24 mm", 20, 290.000001, 100, 290, 100)]

    // The ring about A at the gap from A to B: from 92 % of it to 1/0.92 of it.
    [InlineData("even-gaps", "trunk A at 0, 0 mm diameter 14 mm\ntrunk B at 100, 0 mm diameter 9 mm", 20, 0, 92.000001, 0, 92)]
    [InlineData("even-gaps", "trunk A at 0, 0 mm diameter 14 mm\ntrunk B at 92, 0 mm diameter 9 mm", 20, 0, 99.999999, 0, 100)]

    // Between A and B: a / (200 − a) = 0.92 at a = 184/1.92 = 95.8333…, a circle of Apollonius.
    [InlineData("even-gaps", "trunk A at 0, 0 mm diameter 14 mm\ntrunk B at 200, 0 mm diameter 9 mm", 20, 95.833334, 0, 95.833333, 0)]

    // The largest on the centre line of a container 600 mm wide: 8 % are 48 mm.
    [InlineData("centred-main", "trunk A at 200, 0 mm diameter 14 mm", 20, 48, 100, 48.000001, 100)]
    public void Ground_ends_where_it_does_by_hand(string check, string trunks, double diameter, double takenX, double takenY, double freeX, double freeY)
    {
        var judge = new GroundJudge(new GroundCase(Check.Of(trunks + "\n" + GroundSource.Only(check)).ToContext(), GroundSource.Newcomer("N", diameter)));
        Assert.False(judge.IsFree(PlanPoint.FromMillimetres(takenX, takenY)));
        Assert.Equal(check, judge.Reason.Check.Name);
        Assert.True(judge.IsFree(PlanPoint.FromMillimetres(freeX, freeY)));
    }

    [Fact]
    public void The_area_is_that_of_the_rim_let_in_less_a_disc_by_hand()
    {
        // Of 600 by 400 mm a trunk of 20 mm may stand on 580 by 380 mm, but not within 22 mm of one that is 24 mm thick.
        var inset = Found("trunk A at 30, 20 mm diameter 24 mm\n" + GroundSource.Only("off-container"), new(Length.FromMillimetres(20), null, null));
        Assert.Equal(580 * 380, inset.FreeArea, 20.0);
        Assert.Equal(600 * 400, inset.WholeArea);
        var disc = Found("trunk A at 30, 20 mm diameter 24 mm\n" + GroundSource.Only("touching"), new(Length.FromMillimetres(20), null, null));
        Assert.Equal(2, disc.Outline.Length);
        Assert.Equal(-Math.PI * 22 * 22, GroundOutline.TwiceAreaOf(disc.Outline.Single(ring => GroundOutline.TwiceAreaOf(ring) < 0)) / 2, 2.0);
    }

    [Theory]
    [InlineData(9, 1, 12)]
    [InlineData(14, 2, 24)]
    [InlineData(5, 3, 16)]
    [InlineData(30, 4, 33)]
    [InlineData(20, 5, 6)]
    public void The_outline_parts_free_places_from_others_to_two_hundredths_of_a_millimetre(int trunks, int seed, double diameter)
    {
        var context = Check.Of(GroundSource.Scattered(trunks, seed)).ToContext();
        var answer = FreeGround.FindOutline(context, new(Length.FromMillimetres(diameter), null, null), cancellation: TestContext.Current.CancellationToken);
        Assert.NotEmpty(answer.Outline);
        var ground = new GroundCase(context, answer.Trunk!);
        var test = new GroundTest(new GroundJudge(ground), new GroundBounds(ground), new());
        var random = new Random(seed);
        var slivers = 0;
        const int Places = 20_000;
        for (var number = 0; number < Places; number++)
        {
            var place = PlanPoint.FromMillimetres((random.NextDouble() * 700) - 350, (random.NextDouble() * 420) - 210);
            if (test.IsFree(place) != OutlineReach.Contains(answer.Outline, place) && OutlineReach.Nearest(answer.Outline, place)!.Value.Distance > Length.FromMillimetres(0.02))
            {
                // Only ground, or what takes it, that is narrower than a step may be missing from the outline.
                Assert.True(IsSliver(test, place, answer.Step, test.IsFree(place)), $"{place} is {(test.IsFree(place) ? "free" : "taken")} and drawn the other way");
                slivers++;
            }
        }

        Assert.True(answer.Step <= Length.FromMillimetres(3));
        Assert.True(slivers <= Places / 2000, $"{slivers} of {Places} places lie in slivers");
    }

    [Fact]
    public void A_spot_that_is_written_raises_nothing_that_was_not_said()
    {
        foreach (var (trunks, seed) in new[] { (3, 1), (7, 2), (9, 3), (14, 4) })
        {
            var before = Check.Of(GroundSource.Scattered(trunks, seed));
            var answer = FreeGround.Find(before.ToContext(), new(Length.FromMillimetres(34), Length.FromMillimetres(310), null), cancellation: TestContext.Current.CancellationToken);
            var known = before.Findings.Where(finding => finding.Check.IsComposition).Concat(answer.Anywhere).Select(Key).ToHashSet(StringComparer.Ordinal);
            Assert.NotEmpty(answer.Spots);
            foreach (var spot in answer.Spots)
            {
                var after = Check.Of(TextEdits.Apply(before.Tree.Text.Content, spot.Edits));
                var raised = after.Findings.Where(finding => finding.Check.IsComposition && !known.Contains(Key(finding))).Select(Key);
                Assert.Equal(spot.Raises.Select(Key).Order(StringComparer.Ordinal), raised.Order(StringComparer.Ordinal));
                Assert.Equal(spot.Raises.IsEmpty, spot.Room > Length.Zero);
            }
        }
    }

    [Fact]
    public void Spots_lie_apart_and_have_the_room_that_is_said()
    {
        var context = Check.Of(GroundSource.Scattered(9, 1)).ToContext();
        var answer = FreeGround.Find(context, new(Length.FromMillimetres(12), null, null), cancellation: TestContext.Current.CancellationToken);
        var judge = new GroundJudge(new GroundCase(context, answer.Trunk!));
        Assert.Equal(3, answer.Spots.Length);
        foreach (var spot in answer.Spots)
        {
            Assert.All(answer.Spots, other => Assert.True(ReferenceEquals(spot, other) || spot.Place.DistanceTo(other.Place) >= Length.FromMillimetres(24)));
            Assert.Equal(0, spot.Place.X.Nanometres % Length.NanometresPerMillimetre);
            for (var bearing = 0; bearing < 360; bearing += 5)
            {
                var (sine, cosine) = Math.SinCos(bearing * Math.PI / 180);
                Assert.True(judge.IsFree(new(spot.Place.X + ((spot.Room - Length.FromMillimetres(0.05)) * sine), spot.Place.Y + ((spot.Room - Length.FromMillimetres(0.05)) * cosine))));
            }
        }
    }

    [Fact]
    public void A_trunk_that_is_moved_is_written_at_its_own_place_and_keeps_its_line()
    {
        var before = Check.Of("trunk A at -100, 0 mm diameter 20 mm height 200 mm   # the old one\ntrunk B at 90, 40 mm   diameter 14 mm height 130 mm\ntrunk C at 10, -60 mm diameter 9 mm height 90 mm\n");
        var answer = FreeGround.Find(before.ToContext(), new(null, null, "B"), cancellation: TestContext.Current.CancellationToken);
        var place = answer.Spots[0].Place;
        var after = TextEdits.Apply(before.Tree.Text.Content, answer.Spots[0].Edits);
        Assert.Equal(before.Tree.Text.Content.Replace("at 90, 40 mm", FormattableString.Invariant($"at {place.X.Millimetres}, {place.Y.Millimetres} mm"), StringComparison.Ordinal), after);
    }

    [Fact]
    public void One_more_trunk_takes_the_next_letter_that_nothing_is_named_by()
    {
        var answer = Found("trunk A at -100, 0 mm diameter 20 mm\ntrunk B at 90, 40 mm diameter 14 mm\ntask C prune on A on 2027-03-01\n", new(Length.FromMillimetres(9), null, null));
        Assert.Equal("D", answer.Trunk!.Name);
        Assert.Contains("\ntrunk D   at ", TextEdits.Apply("", answer.Spots[0].Edits.Select(edit => edit with { Place = edit.Place with { Span = new(0, 0) } }).ToArray()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("trunk A at 0, 0 mm", null, "A has no diameter", "A")]
    [InlineData("trunk A at 0, 0 mm diameter 9 mm", null, "X is no trunk that stands or is planned here. There are A.", "X")]
    [InlineData("trunk A at 0, 0 mm diameter 9 mm", null, "The thickness of the trunk is not known", null)]
    [InlineData("planting \"None\"\nspecies larix-kaempferi\n", 9, "nothing bounds the ground", null)]
    public void What_is_in_the_way_is_said_with_what_to_do(string source, int? diameter, string said, string? of)
    {
        var answer = Found(source, new(diameter is { } thick ? Length.FromMillimetres(thick) : null, null, of));
        Assert.Contains(said, answer.Obstacle, StringComparison.Ordinal);
        Assert.Empty(answer.Spots);
    }

    [Fact]
    public void Where_no_ground_is_free_the_least_bad_spots_say_what_they_leave()
    {
        // Everywhere in sight of A and as thick.
        var answer = Found("trunk A at 0, 0 mm diameter 20 mm\n", new(Length.FromMillimetres(20), null, null));
        Assert.Empty(answer.Outline);
        Assert.All(answer.Spots, spot => Assert.Equal(["twin-diameters"], spot.Raises.Select(finding => finding.Check.Name)));
        Assert.Equal("It raises one finding: twin-diameters of A and B.", answer.Spots[0].Why);
    }

    [Fact]
    public void Neighbours_of_one_size_to_which_it_comes_are_not_told_as_cleared()
    {
        var answer = Found("trunk A at -60, 0 mm diameter 20 mm\ntrunk B at 10, 5 mm diameter 20 mm\n", new(Length.FromMillimetres(20), null, null));
        Assert.All(answer.Spots, spot => Assert.Contains(spot.Raises, finding => finding.Check.Name == "twin-diameters"));
        Assert.All(answer.Spots, spot => Assert.Empty(spot.Clears));
    }

    [Theory]
    [InlineData(6, 18, 43)]
    [InlineData(9, 12, 32)]
    [InlineData(9, 12, 110)]
    [InlineData(20, 8, 16)]
    [InlineData(30, 5, 1)]
    public void What_begins_beside_a_spot_is_named_even_where_it_is_narrow(int trunks, double diameter, int seed)
    {
        // The rim is kept to, so that ground never ends by itself.
        var answer = FreeGround.Find(Check.Of(GroundSource.Scattered(trunks, seed)).ToContext(), new(Length.FromMillimetres(diameter), null, null), cancellation: TestContext.Current.CancellationToken);
        Assert.All(answer.Spots, spot => Assert.NotNull(spot.LimitedBy));
    }

    [Fact]
    public void What_holds_wherever_it_stands_takes_no_ground_and_is_told()
    {
        var answer = Found("trunk A at 0, 0 mm diameter 20 mm height 200 mm\ntrunk B at 90, 40 mm diameter 14 mm height 130 mm\ntrunk C at -50, 70 mm diameter 9 mm height 90 mm\n", new(Length.FromMillimetres(30), Length.FromMillimetres(60), null));
        Assert.True(answer.FreeArea > 0);
        Assert.Equal(["even-count", "wide-but-short"], answer.Anywhere.Select(finding => finding.Check.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Thirty_trunks_take_no_longer_than_a_thousand_rounds_of_the_checks()
    {
        // About forty thousand places are tested, and a round of the checks tests one.
        var context = Check.Of(GroundSource.Scattered(30, 1)).ToContext();
        var wish = new GroundWish(Length.FromMillimetres(33), Length.FromMillimetres(300), null);
        for (var round = 0; round < 3; round++)
        {
            FreeGround.Find(context, wish, cancellation: TestContext.Current.CancellationToken);
            _ = Checker.Composition(new CheckContext(context.Planting, context.State, context.Origins, context.Units), CancellationToken.None).Count();
        }

        var search = Least(() => FreeGround.Find(context, wish, cancellation: TestContext.Current.CancellationToken));
        var check = Least(() => Checker.Composition(new CheckContext(context.Planting, context.State, context.Origins, context.Units), CancellationToken.None).Count());
        Assert.True(search < check * 1000, $"the search took {search / check:0} times as long as a round of the checks");
    }

    [Fact]
    public void The_ground_is_the_same_side_by_side_and_one_after_another()
    {
        foreach (var (trunks, seed, diameter) in new[] { (30, 4, 5.0), (14, 2, 24.0), (6, 1, 12.0), (1, 1, 18.0) })
        {
            var context = Check.Of(GroundSource.Scattered(trunks, seed)).ToContext();
            var wish = new GroundWish(Length.FromMillimetres(diameter), Length.FromMillimetres(200), null);
            var one = FreeGround.Find(context, wish, cancellation: TestContext.Current.CancellationToken);
            var other = FreeGround.Find(context, wish, (count, work) => Parallel.For(0, count, work), TestContext.Current.CancellationToken);
            Assert.True(one.FreeArea > 0 || trunks < 30);
            Assert.Equal(one.Outline.Select(ring => string.Join(' ', ring)), other.Outline.Select(ring => string.Join(' ', ring)));
            Assert.Equal(one.Takers, other.Takers);
            Assert.Equal(one.Spots.Select(spot => (spot.Place, spot.Score, spot.Room, spot.Why)), other.Spots.Select(spot => (spot.Place, spot.Score, spot.Room, spot.Why)));
        }
    }

    private static double Least<T>(Func<T> work)
    {
        var least = double.PositiveInfinity;
        for (var round = 0; round < 5; round++)
        {
            var watch = Stopwatch.StartNew();
            work();
            least = Math.Min(least, watch.Elapsed.TotalMilliseconds);
        }

        return least;
    }

    private static string Key(Finding finding) => $"{finding.Check.Name} {string.Join(' ', finding.Trunks)}";

    private static GroundAnswer Found(string source, GroundWish wish) => FreeGround.Find(Check.Of(source).ToContext(), wish, cancellation: TestContext.Current.CancellationToken);

    /// <summary>Whether a place the other way lies within a step and a half on some two sides across from each other.</summary>
    private static bool IsSliver(GroundTest test, PlanPoint place, Length step, bool isFree)
    {
        var reach = step * 1.5;
        for (var bearing = 0; bearing < 180; bearing += 5)
        {
            var (sine, cosine) = Math.SinCos(bearing * Math.PI / 180);
            if (Enumerable.Range(1, 60).Any(part => Differs(part / 60.0)) && Enumerable.Range(1, 60).Any(part => Differs(-part / 60.0)))
            {
                return true;
            }

            bool Differs(double share) => test.IsFree(new(place.X + (reach * (sine * share)), place.Y + (reach * (cosine * share)))) != isFree;
        }

        return false;
    }
}
