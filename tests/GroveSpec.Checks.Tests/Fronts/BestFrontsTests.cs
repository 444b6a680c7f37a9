using System.Globalization;
using GroveSpec.Checks.Fronts;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Checks.Tests.Fronts;

public sealed class BestFrontsTests
{
    [Fact]
    public void No_bearing_of_a_sweep_in_steps_of_a_hundredth_of_a_degree_beats_the_first_suggestion_on_a_thousand_plantings() =>
        Parallel.For(0, 1000, new ParallelOptions { CancellationToken = TestContext.Current.CancellationToken }, seed =>
        {
            var assessment = Check.Of(FrontSource.Of(seed, 3 + (seed % 7)));
            var answer = BestFronts.Find(assessment.ToContext(), assessment.Tree, CancellationToken.None);
            var best = answer.Suggestions[0].Front;

            // The sweep knows nothing of critical bearings: it looks at each bearing by itself.
            var score = new FrontScore(assessment.ToContext());
            var found = new double[FrontScore.Steps];
            var rest = new double[FrontScore.Steps];
            for (var step = 0; step < FrontScore.Steps; step++)
            {
                var from = FrontScore.BearingOf(step);
                found[step] = score.Findings.At(from);
                var (covered, sameness, narrowness) = score.Look(from);
                rest[step] = covered + sameness + narrowness;
            }

            for (var step = 0; step < FrontScore.Steps; step++)
            {
                var turning = 0.0;
                for (var beside = -200; beside <= 200; beside++)
                {
                    turning += Math.Max(0, found[(step + beside + FrontScore.Steps) % FrontScore.Steps] - found[step]) * (201 - Math.Abs(beside)) / (201.0 * 201);
                }

                Assert.True(found[step] + turning + rest[step] > best.Parts.Score - 1e-9, $"seed {seed}: {FrontScore.BearingOf(step)} beats {best.From}");
            }
        });

    [Fact]
    public void A_planting_that_is_its_own_mirror_image_has_mirrored_scores_and_fronts()
    {
        const string Source = """
            planting "Mirror"
            habit group
            container oval 460 x 300 x 40 mm
            viewed from 180 deg, at 1300 mm, eye 200 mm
            trunk A at 0, 31 mm diameter 40 mm height 380 mm
            trunk B at -62, -18 mm diameter 22 mm height 260 mm
            trunk C at 62, -18 mm diameter 22 mm height 260 mm
            trunk D at -141, 12 mm diameter 15 mm height 170 mm
            trunk E at 141, 12 mm diameter 15 mm height 170 mm
            """;
        var answer = FrontsOf(Source);
        for (var place = 1; place < answer.Round.Length; place++)
        {
            Assert.Equal(answer.Round[place], answer.Round[^place], 1e-6);
        }

        // Each suggestion is as good mirrored.
        var score = new FrontRound(new(FrontSource.ContextOf(Source)), CancellationToken.None);
        Assert.All(answer.Suggestions, suggestion => Assert.Equal(suggestion.Front.Parts.Score, score.Of(new Bearing(360 - suggestion.Front.From.Degrees)).Score, 1e-6));
    }

    [Fact]
    public void The_first_suggestion_seldom_stands_within_a_hair_of_where_more_is_found()
    {
        var near = 0;
        for (var seed = 0; seed < 100; seed++)
        {
            var assessment = Check.Of(FrontSource.Of(seed, 5 + (seed % 5)));
            var front = BestFronts.Find(assessment.ToContext(), assessment.Tree, CancellationToken.None).Suggestions[0].Front;
            var room = Math.Min(FrontRound.Apart(front.From, front.Span.From), FrontRound.Apart(front.From, front.Span.To));
            near += front.Span.Width.Degrees is > 1 and < 360 && room < 0.25 ? 1 : 0;
        }

        Assert.InRange(near, 0, 3);
    }

    [Fact]
    public void The_mirror_image_of_a_planting_has_the_mirror_image_of_its_fronts()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var random = new Random(seed);
            var trunks = Enumerable.Range(0, 6).Select(_ => (X: random.Next(-150, 150), Y: random.Next(-90, 90), Thick: random.Next(8, 40), High: random.Next(90, 400))).ToList();
            string Source(int side) => "planting \"Mirrored\"\nhabit group\ncontainer oval 420 x 300 x 40 mm\nviewed from 180 deg, at 1200 mm, eye 200 mm, near\n"
                + string.Concat(trunks.Select((trunk, place) => string.Create(CultureInfo.InvariantCulture, $"trunk T{place} at {side * trunk.X}, {trunk.Y} mm diameter {trunk.Thick} mm height {trunk.High} mm\n")));
            var (before, after) = (FrontsOf(Source(1)).Suggestions, FrontsOf(Source(-1)).Suggestions);
            foreach (var (one, other) in before.Zip(after))
            {
                Assert.Equal(one.Front.Parts.Score, other.Front.Parts.Score, 1e-4);
                Assert.Equal(0, FrontRound.Apart(new Bearing(360 - one.Front.From.Degrees), other.Front.From), 0.021);
                Assert.Equal(0, FrontRound.Apart(new Bearing(360 - one.Front.Span.From.Degrees), other.Front.Span.To), 1e-3);
            }
        }
    }

    [Theory]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(37.5)]
    [InlineData(211.25)]
    public void Turning_the_whole_planting_turns_the_answer(double degrees)
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var random = new Random(seed);
            var trunks = Enumerable.Range(0, 6).Select(_ => (X: random.Next(-150, 150), Y: random.Next(-90, 90), Thick: random.Next(8, 40), High: random.Next(90, 400))).ToList();
            var before = FrontsOf(Source(0)).Suggestions[0].Front;
            var after = FrontsOf(Source(degrees)).Suggestions[0].Front;
            Assert.Equal(before.Parts.Score, after.Parts.Score, 1e-4);
            Assert.Equal(0, FrontRound.Apart(new Bearing(before.From.Degrees + degrees), after.From), 0.021);
            Assert.Equal(before.Span.Width.Degrees, after.Span.Width.Degrees, 0.01);

            string Source(double turned)
            {
                var (sine, cosine) = Math.SinCos(turned * Math.PI / 180);
                return "planting \"Turned\"\nhabit group\ncontainer round 420 x 40 mm\nviewed from 180 deg, at 1200 mm, eye 200 mm\n" + string.Concat(trunks.Select((trunk, place) => string.Create(
                    CultureInfo.InvariantCulture,
                    $"trunk T{place} at {(trunk.X * cosine) + (trunk.Y * sine):0.######}, {(trunk.Y * cosine) - (trunk.X * sine):0.######} mm diameter {trunk.Thick} mm height {trunk.High} mm\n")));
            }
        }
    }

    [Fact]
    public void Suggestions_are_different_fronts_the_best_first_and_hold_as_far_as_they_say()
    {
        var told = 0;
        for (var seed = 0; seed < 60; seed++)
        {
            var assessment = Check.Of(FrontSource.Of(seed, 2 + (seed % 8)));
            var answer = BestFronts.Find(assessment.ToContext(), assessment.Tree, TestContext.Current.CancellationToken);
            var fronts = answer.Suggestions.Select(suggestion => suggestion.Front).ToList();
            Assert.Equal(fronts.OrderBy(front => front.Parts.Score), fronts);
            for (var later = 0; later < fronts.Count; later++)
            {
                for (var earlier = 0; earlier < later; earlier++)
                {
                    Assert.True(FrontRound.Apart(fronts[earlier].From, fronts[later].From) >= BestFronts.LeastApart - 1e-9);
                    Assert.False(fronts[earlier].Span.Holds(fronts[later].From));
                }

                // Just inside both ends no more is found than in the middle of it, and just outside there is.
                var (front, context) = (fronts[later], assessment.ToContext());
                Assert.Equal(front.Parts.Findings, FrontScoreTests.Weight(FrontScoreTests.Found(context, front.From)), 1e-9);
                Assert.Equal(front.Found, FrontScoreTests.Found(context, front.From).Sum(finding => 1 + finding.Untold));
                if (front.Span is { IsAllRound: false, Width.Degrees: > 0.1 })
                {
                    told++;
                    Assert.True(Inside(1) <= front.Parts.Findings && Inside(-1) <= front.Parts.Findings, $"seed {seed}, in {front.Span} {front.Parts} {Inside(1)} {Inside(-1)}");
                    Assert.True(Outside(front.Span.From, -1) > front.Parts.Findings, $"seed {seed}, before {front.Span}");
                    Assert.True(Outside(front.Span.To, 1) > front.Parts.Findings, $"seed {seed}, after {front.Span}");

                    // What changes within a thousandth of a degree counts as a point.
                    double Inside(int way) => At(context, (way > 0 ? front.Span.From : front.Span.To).Degrees + (way * 2e-3));

                    // What breaks a front may itself last no longer than a small part of a degree.
                    double Outside(Bearing end, int way) => new[] { 1e-6, 1e-5, 3e-5, 1e-4, 1e-3, 3e-3 }.Max(degrees => At(context, end.Degrees + (way * degrees)));
                }
            }
        }

        Assert.True(told > 60);

        static double At(CheckContext context, double degrees) => FrontScoreTests.Weight(FrontScoreTests.Found(context, new Bearing(degrees)));
    }

    [Theory]
    [InlineData("viewed from 180 deg, at 1200 mm, eye 200 mm, near # kept", "viewed from @, at 1200 mm, eye 200 mm, near # kept")]
    [InlineData("viewed   at 1200 mm from 0.5 eye 200 mm", "viewed   at 1200 mm from @ eye 200 mm")]
    [InlineData("viewed at 1200 mm, eye 200 mm", "viewed from @, at 1200 mm, eye 200 mm")]
    [InlineData("viewed near", "viewed from @, near")]
    [InlineData("site latitude 50 N # said of the site", "site latitude 50 N # said of the site\nviewed from @")]
    public void The_edit_writes_the_bearing_and_touches_nothing_else(string before, string after)
    {
        string Source(string line) => $"planting \"Edit\"\nhabit group\n{line}\n\ntrunk A at -31, 12 mm diameter 30 mm height 300 mm\ntrunk B at 44, 7 mm diameter 18 mm height 210 mm\ntrunk C at 90, -40 mm diameter 12 mm height 160 mm\n";
        var assessment = Check.Of(Source(before));
        var suggestion = BestFronts.Find(assessment.ToContext(), assessment.Tree, TestContext.Current.CancellationToken).Suggestions[0];
        var written = TextEdits.Apply(assessment.Tree.Text.Content, suggestion.Edits);
        Assert.Equal(Source(after.Replace("@", suggestion.Front.From.Degrees.ToString("0.##", CultureInfo.InvariantCulture) + " deg", StringComparison.Ordinal)), written);
        Assert.Equal(suggestion.Front.From, Check.Of(written).Planting.Viewed!.From);
    }

    [Fact]
    public void Every_edit_binds_again_to_its_bearing_and_then_the_front_is_the_one_it_has_now()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var assessment = Check.Of(FrontSource.Of(seed, 3 + (seed % 6)));
            foreach (var suggestion in BestFronts.Find(assessment.ToContext(), assessment.Tree, TestContext.Current.CancellationToken).Suggestions)
            {
                var again = Check.Of(TextEdits.Apply(assessment.Tree.Text.Content, suggestion.Edits));
                Assert.Equal(suggestion.Front.From, again.Planting.Viewed!.From);
                Assert.Equal(assessment.Planting.Viewed?.Distance, again.Planting.Viewed.Distance);
                Assert.Equal(assessment.Planting.Viewed?.Depth, again.Planting.Viewed.Depth);
                var now = BestFronts.Find(again.ToContext(), again.Tree, TestContext.Current.CancellationToken).Now!;
                Assert.Equal(suggestion.Front.Parts, now.Parts);
            }
        }
    }

    [Fact]
    public void A_view_that_could_not_be_read_is_left_alone()
    {
        var assessment = Check.Of("planting \"Edit\"\nviewed from the window\ntrunk A at -31, 12 mm diameter 30 mm\ntrunk B at 44, 7 mm diameter 18 mm\n");
        Assert.Empty(BestFronts.Find(assessment.ToContext(), assessment.Tree, TestContext.Current.CancellationToken).Suggestions[0].Edits);
    }

    [Theory]
    [InlineData("", "No trunk stands here, so there is no front to look for.")]
    [InlineData("trunk A diameter 20 mm\ntrunk B diameter 10 mm", "No trunk that stands has a place (A and B), so nothing is known of how they are seen. Measure them with a tape, or write where they stand.")]
    [InlineData("trunk A at 0, 0 mm diameter 20 mm", "A is the only trunk whose place is known, and alone it looks the same to the checks from all sides: choose its front by its bark and its bends.")]
    public void Where_there_is_no_front_to_look_for_that_is_said(string trunks, string expected)
    {
        var answer = FrontsOf(Check.Head + trunks + "\n");
        Assert.Equal(expected, answer.Obstacle);
        Assert.Empty(answer.Suggestions);
        Assert.Empty(answer.Round);
    }

    [Fact]
    public void A_front_is_looked_for_in_plantings_of_up_to_sixty_trunks()
    {
        string Source(int count) => Check.Head + string.Concat(Enumerable.Range(0, count).Select(place => string.Create(CultureInfo.InvariantCulture, $"trunk T{place} at {(place * 89 % 540) - 270}, {(place * 53 % 340) - 170} mm diameter {8 + (place % 7)} mm height {90 + (place * 13 % 200)} mm\n")));
        Assert.Equal("61 trunks stand here, and a front is looked for in plantings of up to 60. Put those that make the picture into a file of their own, and ask for its front.", FrontsOf(Source(61)).Obstacle);
        Assert.NotEmpty(FrontsOf(Source(60)).Suggestions);
    }

    private static FrontsAnswer FrontsOf(string source)
    {
        var assessment = Check.Of(source);
        return BestFronts.Find(assessment.ToContext(), assessment.Tree, TestContext.Current.CancellationToken);
    }
}
