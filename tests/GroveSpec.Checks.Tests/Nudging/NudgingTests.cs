using GroveSpec.Checks.Nudging;
using GroveSpec.Checks.Tests.Choosing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Checks.Tests.Nudging;

public sealed class NudgingTests
{
    private static readonly NudgeWish Usual = NudgeWish.Usual(UnitSystem.Metric);

    private static readonly string[] OutOfReach = ["even-count", "wide-but-short", "thin-but-tall"];

    /// <summary>How many plantings are held against the long search; all two hundred take some minutes.</summary>
    private static readonly int Plantings = int.Parse(Environment.GetEnvironmentVariable("GROVESPEC_NUDGED_PLANTINGS") ?? "40", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>B stands 1 mm off the line from A to C; everything else is in order.</summary>
    private const string Row = """
        planting "Row"
        habit group
        container rectangle 500 x 300 x 40 mm
        viewed from 180 deg, at 1500 mm, eye 250 mm
        trunk A at -120, -20 mm diameter 40 mm height 460 mm
        trunk B at -30, 1 mm diameter 24 mm height 300 mm
        trunk C at 110, 30 mm diameter 12 mm height 170 mm

        """;

    [Fact]
    public void The_one_that_stands_in_line_is_moved_just_past_the_limit_square_to_the_line()
    {
        // Of a line through A and C, B at rest stands d off; it is told up to half of the radii, found by Rod's closed form.
        var answer = Find(Row);
        Assert.Equal(["three-in-line"], answer.Now.Select(finding => finding.Check.Name));
        var suggestion = Assert.Single(answer.Suggestions);
        var move = Assert.Single(suggestion.Moves);
        Assert.Empty(suggestion.Left);

        // No move that clears can be shorter than the least of the three that go square to the line.
        var context = ThinningScoreTests.ContextOf(Row);
        var sections = context.Standing.Sections;
        var rod = Craft.Composition.RodThroughThree.Of(sections[0], sections[1], sections[2]);
        var least = Enumerable.Range(0, 3).Min(position => rod.MoveToClear(position, 0.5).Millimetres);
        Assert.InRange(move.Distance.Millimetres, least * 0.98, least + 0.1);
    }

    [Fact]
    public void What_is_fixed_stays_and_another_goes()
    {
        var answer = Find(Row.Replace("diameter 24 mm", "diameter 24 mm fixed", StringComparison.Ordinal));
        Assert.DoesNotContain(answer.Suggestions.Single().Moves, move => move.Name == "B");
        Assert.Equal(["B is fixed and stays as it is."], answer.Remarks);
    }

    [Fact]
    public void Where_all_are_fixed_that_is_said() =>
        Assert.Equal("No trunk here may be moved or bent.", Find(Row.Replace(" mm height", " mm fixed height", StringComparison.Ordinal)).Obstacle);

    [Fact]
    public void No_trunk_goes_further_than_its_roots_allow()
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var answer = Find(Wood.Of(seed, 4 + (seed % 5)), Usual with { Reach = Length.FromMillimetres(7) }, 0.1);
            Assert.All(answer.Suggestions.SelectMany(suggestion => suggestion.Moves), move => Assert.InRange(move.Distance.Millimetres, 0.05, 7 + 1e-6));
        }
    }

    [Fact]
    public void A_planting_with_nothing_amiss_is_left_alone() =>
        Assert.Equal("The checks of composition find nothing here, so nothing has to be moved.", Find(Row.Replace("-30, 1 mm", "-30, -30 mm", StringComparison.Ordinal)).Obstacle);

    [Fact]
    public void What_no_move_can_mend_is_named()
    {
        var answer = Find("planting \"Two\"\nhabit group\ntrunk A at 0, 0 mm diameter 30 mm height 300 mm\ntrunk B at 90, 20 mm diameter 12 mm height 140 mm\n");
        Assert.Equal("What the checks of composition find here (even-count) no move can mend.", answer.Obstacle);
    }

    [Fact]
    public void What_is_accepted_or_muted_is_not_mended()
    {
        Assert.NotNull(Find(Row + "accept three-in-line A B C because \"it is a hedge\"\n").Obstacle);
        Assert.NotNull(Find(Row + "mute three-in-line because \"it is a hedge\"\n").Obstacle);
    }

    [Fact]
    public void Places_that_hang_on_tape_readings_are_not_moved()
    {
        var answer = Find(Row + "trunk D diameter 8 mm height 130 mm\ntape A to D 60 mm\ntape B to D 70 mm\ntape C to D 190 mm\n");
        Assert.Contains(answer.Remarks, remark => remark.StartsWith("A, B, C and D stay where they are, since their places hang on tape readings", StringComparison.Ordinal));
        Assert.Empty(answer.Suggestions);
    }

    [Fact]
    public void A_trunk_that_is_planned_where_another_is_moved_to_is_named()
    {
        var move = Find(Row).Suggestions.Single().Moves.Single();
        var planned = FormattableString.Invariant($"trunk P at {move.Place.X.Millimetres + 5}, {move.Place.Y.Millimetres} mm diameter 10 mm height 130 mm planned spring 2028\n");
        var answer = Find(Row + planned);
        Assert.Equal([move], answer.Suggestions.Single().Moves);
        Assert.Contains($"Moved so, {move.Name} would touch P, which is planned 5 mm from there, centre to centre, and not looked at while it does not stand. Choose another place for one of them, or ask for a day on which P stands.", answer.Remarks);
        var elsewhere = Find(Row + "trunk P at -200, -120 mm diameter 10 mm height 130 mm planned spring 2028\n");
        Assert.DoesNotContain(elsewhere.Remarks, remark => remark.Contains("planned", StringComparison.Ordinal));
    }

    [Fact]
    public void The_feet_of_a_clump_stay_and_its_tops_are_bent_out_of_their_line()
    {
        const string source = """
            planting "Tops"
            habit clump
            viewed from 180 deg, at 1500 mm, eye 250 mm
            trunk A at -100, 0 mm diameter 12 mm height 300 mm
            trunk B at 30, 60 mm diameter 24 mm height 437 mm
            trunk C at 100, -20 mm diameter 40 mm height 500 mm

            """;
        var answer = Find(source);
        Assert.Contains(answer.Now, finding => finding.Check.Name == "level-tops");
        var suggestion = answer.Suggestions[0];
        Assert.Empty(suggestion.Left);
        var move = Assert.Single(suggestion.Moves);
        Assert.False(move.IsMoved);
        Assert.InRange(move.Lean!.Value.FromUpright.Degrees, 0.5, 15);
        var written = TextEdits.Apply(source, suggestion.Edits);
        Assert.Contains($"lean {move.Lean.Value.FromUpright.Degrees.ToString(System.Globalization.CultureInfo.InvariantCulture)} deg toward", written, StringComparison.Ordinal);
        Assert.Equal(ThinningScoreTests.ContextOf(source).Standing.Trunks.Select(trunk => trunk.Place), ThinningScoreTests.ContextOf(written).Standing.Trunks.Select(trunk => trunk.Place));
    }

    [Fact]
    public void A_bent_trunk_keeps_its_length_unless_its_height_was_read_on_a_day()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var source = Wood.Of(seed, 5).Replace("habit group", "habit clump", StringComparison.Ordinal);
            foreach (var move in Find(source).Suggestions.SelectMany(suggestion => suggestion.Moves))
            {
                var trunk = ThinningScoreTests.ContextOf(source).Standing.Trunks.Single(trunk => trunk.Name == move.Name);
                var height = (move.Height ?? trunk.Height!.Value.Value).Millimetres;
                Assert.Equal(trunk.Height!.Value.Value.Millimetres, height / Math.Cos(move.Lean!.Value.FromUpright.Radians), 0.51 / Math.Cos(move.Lean.Value.FromUpright.Radians));
            }
        }
    }

    [Fact]
    public void The_checks_find_in_the_written_text_just_what_was_told_as_left()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var source = Wood.Of(seed, 3 + (seed % 7)).Replace("habit group", seed % 3 == 0 ? "habit clump" : "habit group", StringComparison.Ordinal);
            foreach (var suggestion in Find(source, Usual, 0.2).Suggestions)
            {
                var written = ThinningScoreTests.ContextOf(TextEdits.Apply(source, suggestion.Edits));
                Assert.Equal(Keys(suggestion.Left), Keys(Checker.Check(written, [], TestContext.Current.CancellationToken).Findings.Where(finding => finding.Check.IsComposition)));
                Assert.True(suggestion.LeftCount < Find(source, Usual, 0.2).NowCount);
            }
        }
    }

    [Fact]
    public void Of_a_trunk_that_is_moved_it_is_told_that_tapes_read_to_it_fit_no_more()
    {
        const string told = "Tapes were read to B: once it is moved those readings fit no more, so read them anew or take them out.";
        var fixedBesideB = Row.Replace("diameter 40 mm", "diameter 40 mm fixed", StringComparison.Ordinal).Replace("diameter 12 mm", "diameter 12 mm fixed", StringComparison.Ordinal);
        Assert.Contains(told, Find(fixedBesideB + "tape A to B 92.4 mm\n").Remarks);
        Assert.DoesNotContain(Find(fixedBesideB + "tape A to C 235.4 mm\n").Remarks, remark => remark.StartsWith("Tapes were read", StringComparison.Ordinal));
    }

    [Fact]
    public void A_run_that_is_written_out_goes_with_its_foot()
    {
        const string run = "trunk B at -30, 1 mm diameter 24 mm line (-30,1,0) (-20,4,120) (-36,0,300) mm";
        var source = Row.Replace("trunk B at -30, 1 mm diameter 24 mm height 300 mm", run, StringComparison.Ordinal)
            .Replace("diameter 40 mm", "diameter 40 mm fixed", StringComparison.Ordinal).Replace("diameter 12 mm", "diameter 12 mm fixed", StringComparison.Ordinal);
        var suggestion = Find(source).Suggestions[0];
        var (was, now) = (ThinningScoreTests.ContextOf(source).Standing.Trunks[1].Trunk, ThinningScoreTests.ContextOf(TextEdits.Apply(source, suggestion.Edits)).Standing.Trunks[1].Trunk);
        Assert.NotEqual(was.At!.Value.Value, now.At!.Value.Value);
        Assert.Equal(was.Line.Select(point => (point.X - was.At.Value.Value.X, point.Y - was.At.Value.Value.Y, point.Z)), now.Line.Select(point => (point.X - now.At.Value.Value.X, point.Y - now.At.Value.Value.Y, point.Z)));
    }

    [Fact]
    public void Whatever_one_trunk_can_mend_alone_is_mended_and_by_no_longer_way()
    {
        var mended = 0;
        for (var seed = 0; seed < 100; seed++)
        {
            var context = ThinningScoreTests.ContextOf(Wood.Of(seed, 3 + (seed % 6)));
            if (SingleMove(context, 25) is { } shortest)
            {
                var answer = GroveSpec.Checks.Nudging.Nudging.Find(context, Usual, 0.05, null, TestContext.Current.CancellationToken);
                Assert.All(answer.Suggestions[0].Left, finding => Assert.Contains(finding.Check.Name, OutOfReach));
                Assert.InRange(answer.Suggestions[0].Distance.Millimetres, 0.05, shortest + 1e-6);
                mended++;
            }
        }

        Assert.True(mended > 15, $"Only {mended} could be mended by one.");
    }

    [Theory]
    [InlineData(39)]
    [InlineData(40)]
    [InlineData(41)]
    [InlineData(42)]
    public void Trunks_are_not_brought_so_near_that_their_bark_meets_just_at_the_limit(double reach)
    {
        // The shortest way would set T1 and T3 19.5 mm apart, as much as both radii together, which the check tells as touching.
        const string three = """
            planting "Three"
            habit group
            container oval 600 x 400 x 50 mm
            viewed from 180 deg, at 1100 mm, eye 160 mm, near
            trunk T1 at -15, 4 mm diameter 28.1 mm height 350 mm
            trunk T2 at 33, -89 mm diameter 15.0 mm height 214 mm
            trunk T3 at -42, -15 mm diameter 10.9 mm height 181 mm

            """;
        var answer = Find(three, Usual with { Reach = Length.FromMillimetres(reach) });
        Assert.Equal(3, answer.Now.Length);
        Assert.Empty(answer.Suggestions[0].Left);
    }

    [Fact]
    public void Where_something_is_left_a_second_run_from_there_finds_nothing_better()
    {
        // Eight trunks, of which the first search left the main one on the centre line.
        const string eight = """
            planting "Eight"
            habit group
            species acer-palmatum
            container oval 600 x 400 x 50 mm
            viewed from 180 deg, at 1100 mm, eye 160 mm, near
            trunk T1 at -41, 77 mm diameter 21.8 mm height 257 mm
            trunk T2 at -5, -78 mm diameter 21.2 mm height 257 mm
            trunk T3 at 107, -19 mm diameter 17.5 mm height 247 mm
            trunk T4 at 64, -107 mm diameter 16.7 mm height 242 mm
            trunk T5 at -168, 30 mm diameter 16.0 mm height 210 mm
            trunk T6 at 20, 77 mm diameter 15.8 mm height 216 mm
            trunk T7 at 31, -80 mm diameter 14.7 mm height 206 mm
            trunk T8 at -133, -107 mm diameter 12.2 mm height 188 mm

            """;
        Assert.Equal(["even-count"], Find(eight).Suggestions[0].Left.Select(finding => finding.Check.Name));
    }

    [Fact]
    public void Moves_are_at_most_a_tenth_longer_than_those_of_a_long_search()
    {
        var (compared, longer) = (0, new List<string>());
        for (var seed = 0; seed < Plantings; seed++)
        {
            var context = ThinningScoreTests.ContextOf(Wood.Of(seed, 3 + (seed % 6)));
            var shortest = LongSearch.Shortest(context, 4, 60_000, seed);
            if (shortest is > 0 and < double.PositiveInfinity)
            {
                compared++;
                var first = GroveSpec.Checks.Nudging.Nudging.Find(context, Usual, 1, null, TestContext.Current.CancellationToken).Suggestions[0];
                if (first.Left.Any(finding => !OutOfReach.Contains(finding.Check.Name)) || first.Distance.Millimetres > (shortest * 1.1) + 0.1)
                {
                    longer.Add($"seed {seed}: {first.Distance.Millimetres:F1} mm leaving {first.LeftCount}, {shortest:F1} mm are enough");
                }
            }
        }

        Assert.Empty(longer);
        Assert.True(compared > Plantings / 2, $"{compared} of {Plantings} could be compared.");
    }

    [Fact]
    public void Dense_groups_of_twelve_are_mostly_cleared()
    {
        // Nine of these ten are known to be clearable; a search that shifted trunks about by chance, which this one replaced, cleared five in the same time.
        var left = Enumerable.Range(1, 10).Count(seed => Find(Wood.Of(seed, 12)).Suggestions[0].Left.Any(finding => !OutOfReach.Contains(finding.Check.Name)));
        Assert.InRange(left, 0, 3);
    }

    [Fact]
    public void Two_that_stand_in_each_others_depth_both_go_where_neither_can_go_far_enough()
    {
        // Of three, thickness goes against nearness until A stands as near as C: 25 + 80 = 105 mm of way, and roots allow 60 to each.
        const string trade = """
            planting "Trade"
            habit group
            container oval 620 x 420 x 40 mm
            viewed from 180 deg, at 1500 mm, eye 250 mm, near
            trunk A at 90, 25 mm diameter 32 mm height 310 mm
            trunk B at -150, 38 mm diameter 16 mm height 170 mm
            trunk C at 15, -80 mm diameter 10 mm height 115 mm
            """;
        var answer = Find(trade);
        Assert.Equal(["depth-reversed"], answer.Now.Select(finding => finding.Check.Name));
        var suggestion = Assert.Single(answer.Suggestions);
        Assert.Empty(suggestion.Left);
        Assert.Equal(["A", "C"], suggestion.Moves.Select(move => move.Name).Order(StringComparer.Ordinal));
        Assert.InRange(suggestion.Distance.Millimetres, 104.9, 106.2);
        Assert.Empty(Find(trade, Usual with { Reach = Length.FromMillimetres(52) }).Suggestions);

        // The other way about where the far ones are meant to be thick.
        var far = trade.Replace("eye 250 mm, near", "eye 250 mm, far", StringComparison.Ordinal).Replace("15, -80 mm diameter 10 mm height 115", "15, -80 mm diameter 33 mm height 320", StringComparison.Ordinal).Replace("diameter 32 mm height 310", "diameter 10 mm height 115", StringComparison.Ordinal);
        Assert.Empty(Assert.Single(Find(far).Suggestions).Left);
    }

    [Fact]
    public void An_order_of_depth_at_the_very_limit_is_amiss_for_the_search_as_it_is_for_the_checks()
    {
        // Ranks of thickness 1 to 5 and of nearness 4, 2, 5, 1, 3: Spearman's coefficient is 1 − 6·26/120 = −.3.
        var context = ThinningScoreTests.ContextOf("""
            planting "Limit"
            habit group
            viewed from 180 deg, at 1500 mm, eye 250 mm, near
            trunk A at 150, -60 mm diameter 10 mm height 120 mm
            trunk B at 45, 62 mm diameter 14 mm height 175 mm
            trunk C at -70, -105 mm diameter 20 mm height 230 mm
            trunk D at -95, 108 mm diameter 28 mm height 330 mm
            trunk E at -170, 10 mm diameter 40 mm height 450 mm

            """);
        Assert.Contains(Checker.Composition(context, TestContext.Current.CancellationToken), finding => finding.Check.Name == "depth-reversed");
        var faults = new List<GroveSpec.Craft.Moving.StandFault>();
        GroveSpec.Checks.Nudging.Nudging.Stand(context, NudgeLimits.Of(context, 1e-6, withSizes: true)).Find(faults);
        Assert.Contains(faults, fault => fault.Kind == GroveSpec.Craft.Moving.StandFaultKind.DepthReversed);
    }

    [Fact]
    public void Where_the_view_means_an_order_of_depth_moves_are_at_most_a_tenth_longer_too()
    {
        var (compared, longer) = (0, new List<string>());
        for (var seed = 0; seed < Plantings / 2; seed++)
        {
            var context = ThinningScoreTests.ContextOf(Wood.Of(seed, 3 + (seed % 4)).Replace("eye 250 mm", "eye 250 mm, near", StringComparison.Ordinal));
            if (Checker.Composition(context, TestContext.Current.CancellationToken).Any(finding => finding.Check.Name == "depth-reversed")
                && LongSearch.Shortest(context, 4, 60_000, seed) is > 0 and < double.PositiveInfinity and var shortest)
            {
                compared++;
                var first = GroveSpec.Checks.Nudging.Nudging.Find(context, Usual, 1, null, TestContext.Current.CancellationToken).Suggestions[0];
                if (first.Left.Any(finding => !OutOfReach.Contains(finding.Check.Name)) || first.Distance.Millimetres > (shortest * 1.1) + 0.1)
                {
                    longer.Add($"seed {seed}: {first.Distance.Millimetres:F1} mm leaving {first.LeftCount}, {shortest:F1} mm are enough");
                }
            }
        }

        Assert.Empty(longer);
        Assert.True(compared > 2, $"{compared} could be compared.");
    }

    [Fact]
    public void No_trunk_goes_a_tenth_of_a_millimetre_where_the_others_can_do_without_it()
    {
        // Of the shortest ways for these two rows, 68.1 mm together, two are of .3 and .1 mm; without them the others go hardly farther.
        const string rows = """
            planting  "Two rows"
            habit     group
            container rectangle 600 x 300 x 45 mm
            viewed    from 180 deg, at 1400 mm, eye 200 mm, near
            trunk N1  at -180, -30 mm  diameter 28 mm    height 420 mm
            trunk N2  at -100, -29 mm  diameter 33 mm    height 470 mm
            trunk N3  at -20, -31 mm   diameter 40.2 mm  height 530 mm
            trunk N4  at 61, -30 mm    diameter 23.8 mm  height 380 mm
            trunk S1  at -128, 66 mm   diameter 20.1 mm  height 340 mm
            trunk S2  at 8, 52 mm      diameter 17 mm    height 305 mm
            trunk S3  at 148, 44 mm    diameter 14 mm    height 265 mm

            """;
        var suggestion = Find(rows).Suggestions[0];
        Assert.Empty(suggestion.Left);
        Assert.All(suggestion.Moves, move => Assert.True(move.Distance.Millimetres >= 1, $"{move.Name} goes {move.Distance.Millimetres:F1} mm."));
        Assert.InRange(suggestion.Distance.Millimetres, 0, 68.1 * 1.05);
    }

    [Fact]
    public void The_same_planting_gives_the_same_moves_each_time_whether_or_not_searches_run_at_once()
    {
        for (var seed = 0; seed < 6; seed++)
        {
            var context = ThinningScoreTests.ContextOf(Wood.Of(seed, 9));
            var one = GroveSpec.Checks.Nudging.Nudging.Find(context, Usual, 1, null, TestContext.Current.CancellationToken);
            var other = GroveSpec.Checks.Nudging.Nudging.Find(context, Usual, 1, (count, work) => Parallel.For(0, count, work), TestContext.Current.CancellationToken);
            Assert.Equal(Written(one), Written(other));
            Assert.Equal(Written(one), Written(GroveSpec.Checks.Nudging.Nudging.Find(context, Usual, 1, null, TestContext.Current.CancellationToken)));
        }

        static string Written(NudgeAnswer answer) => string.Join('\n', answer.Suggestions.SelectMany(suggestion => suggestion.Edits).Select(edit => edit.NewText));
    }

    /// <summary>The shortest whole-millimetre move of one trunk after which the checks themselves find nothing that moves can mend; null where there is none within reach.</summary>
    private static double? SingleMove(CheckContext context, int reach)
    {
        var stand = GroveSpec.Checks.Nudging.Nudging.Stand(context, NudgeLimits.Of(context, 0, withSizes: true));
        if (stand.Weigh(1e9, out _) == 0)
        {
            return null;
        }

        double? shortest = null;
        for (var place = 0; place < context.Standing.Count; place++)
        {
            for (var right = -reach; right <= reach; right++)
            {
                for (var back = -reach; back <= reach; back++)
                {
                    var way = Math.Sqrt((right * right) + (back * back));
                    stand.Shift(place, right, back);
                    if (way <= reach && !(way >= shortest) && stand.Weigh(0, out _) == 0 && IsClear(context, place, right, back))
                    {
                        shortest = way;
                    }
                }
            }

            stand.Shift(place, 0, 0);
        }

        return shortest;
    }

    private static bool IsClear(CheckContext context, int place, int right, int back)
    {
        var name = context.Standing.Trunks[place].Name;
        var foot = context.Standing.Trunks[place].Place!.Value;
        var to = new PlanPoint(foot.X + Length.FromMillimetres(right), foot.Y + Length.FromMillimetres(back));
        var state = context.State with { Trunks = [.. context.State.Trunks.Select(trunk => trunk.Name == name ? trunk with { Place = to } : trunk)] };
        return Checker.Composition(new CheckContext(context.Planting, state, context.Origins, context.Units), TestContext.Current.CancellationToken).All(finding => OutOfReach.Contains(finding.Check.Name));
    }

    private static NudgeAnswer Find(string source, NudgeWish? wish = null, double effort = 1) =>
        GroveSpec.Checks.Nudging.Nudging.Find(ThinningScoreTests.ContextOf(source), wish ?? Usual, effort, null, TestContext.Current.CancellationToken);

    private static List<string> Keys(IEnumerable<Finding> findings) =>
        [.. findings.Select(finding => $"{finding.Check.Name} {string.Join(' ', finding.Trunks)}").Order(StringComparer.Ordinal)];
}
