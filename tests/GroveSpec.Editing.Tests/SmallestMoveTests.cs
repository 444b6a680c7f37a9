using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Checks.Moving;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Editing.Tests;

/// <summary>Holds the move against trying every place in the text itself, which shares no code with the search but the checks.</summary>
public sealed partial class SmallestMoveTests
{
    private const int Farthest = 5;

    [Fact]
    public void No_smaller_move_of_whole_millimetres_would_do() => Gen.Select(Gen.Int[-60, 60], Gen.Int[-40, 40], Gen.Int[8, 30], Gen.Int[80, 400]).Array[3, 5].Sample(
        trunks =>
        {
            var lines = trunks.Select((trunk, index) => Line(index, trunk.Item1, trunk.Item2, trunk.Item3, trunk.Item4)).ToArray();
            var before = Of(lines);
            foreach (var finding in before.Findings.Where(finding => finding.Check.IsComposition).Take(2))
            {
                var move = SmallestMove.Find(before.ToContext(), finding, SmallestMove.MostLooks, TestContext.Current.CancellationToken);
                var reach = move is null ? Farthest : Math.Min(Farthest, Distance(move, trunks));
                for (var index = 0; index < trunks.Length; index++)
                {
                    if (!finding.Trunks.Contains(Name(index)))
                    {
                        continue;
                    }

                    for (var right = -Farthest; right <= Farthest; right++)
                    {
                        for (var back = -Farthest; back <= Farthest; back++)
                        {
                            if (Math.Sqrt((right * right) + (back * back)) < reach - 1e-9 && (right, back) != (0, 0))
                            {
                                var tried = (string[])lines.Clone();
                                tried[index] = Line(index, trunks[index].Item1 + right, trunks[index].Item2 + back, trunks[index].Item3, trunks[index].Item4);
                                Assert.False(Clears(before, Of(tried), finding), $"{move?.Title} for {finding.Message}, but {Name(index)} by {right}, {back} would do");
                            }
                        }
                    }
                }

                if (move is not null)
                {
                    Assert.Single(move.Edits);
                    Assert.True(Clears(before, Assessed(Edited(Text(lines), move)), finding), move.Title);
                }
            }
        },
        iter: 12);

    [Fact]
    public void A_fixed_trunk_is_left_and_another_is_moved()
    {
        var assessment = Of([Line(0, -50, 0, 20, 300) + " fixed", Line(1, 0, 1, 12, 200) + " fixed", Line(2, 60, 0, 16, 240)]);

        Assert.StartsWith("move C ", Move(assessment)!.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_every_trunk_is_fixed_or_grows_from_one_root_no_move_is_offered()
    {
        Assert.Null(Move(Of([Line(0, -50, 0, 20, 300) + " fixed", Line(1, 0, 1, 12, 200) + " fixed", Line(2, 60, 0, 16, 240) + " fixed"])));
        Assert.Null(Move(Assessed("planting \"T\"\nhabit clump\n" + string.Join('\n', Line(0, -50, 0, 20, 300), Line(1, 0, 1, 12, 200), Line(2, 60, 0, 16, 240)) + "\n")));
    }

    [Fact]
    public void A_trunk_from_which_a_tape_places_another_is_left_and_a_trunk_that_holds_none_is_moved()
    {
        // G stands at 10, 60 by the readings to B, C and D; A holds nobody, and moving B would be shorter.
        string[] lines = [Line(0, -50, 0, 20, 300), Line(1, 0, 1, 12, 200), Line(2, 60, 0, 16, 240), Line(3, 10, -70, 14, 220)];
        string[] tapes = ["trunk G diameter 5 mm", "tape B to G 59.841 mm", "tape C to G 78.102 mm", "tape D to G 130 mm"];

        Assert.StartsWith("move A ", Move(Of([.. lines, .. tapes]))!.Title, StringComparison.Ordinal);
        Assert.Null(Move(Of([.. lines, .. tapes, "tape A to G 84.853 mm"])));
    }

    [Fact]
    public void A_tape_between_places_of_the_file_holds_no_trunk()
    {
        string[] lines = [Line(0, -50, 0, 20, 300), Line(1, 0, 1, 12, 200), Line(2, 60, 0, 16, 240)];

        Assert.Equal(Move(Of(lines))!.Title, Move(Of([.. lines, "tape A to B 50 mm", "tape A to C 110 mm", "tape B to C 60 mm"]))!.Title);
    }

    [Fact]
    public void A_run_that_is_written_out_goes_with_its_foot()
    {
        const string Run = "line (0,1,0) (0,9,60) (0,1,200) mm";
        string[] lines = [Line(0, -50, 0, 20, 300) + " fixed", Line(1, 0, 1, 12, 200) + " " + Run, Line(2, 60, 0, 16, 240) + " fixed"];
        var before = Of(lines);

        var move = Move(before)!;

        Assert.Equal(2, move.Edits.Length);
        var place = Place().Match(move.Edits[0].NewText);
        var (x, y) = (int.Parse(place.Groups[1].Value, CultureInfo.InvariantCulture), int.Parse(place.Groups[2].Value, CultureInfo.InvariantCulture));
        Assert.Equal(Invariant($"line ({x},{y},0) ({x},{y + 8},60) ({x},{y},200) mm"), move.Edits[1].NewText);
        Assert.True(Clears(before, Assessed(Edited(Text(lines), move)), Row(before)), move.Title);
    }

    [Fact]
    public void A_trunk_whose_run_alone_says_where_it_stands_keeps_its_run()
    {
        string[] lines = [Line(0, -50, 0, 20, 300) + " fixed", "trunk B diameter 12 mm line (0,1,0) (0,1,200) mm", Line(2, 60, 0, 16, 240) + " fixed"];
        var before = Of(lines);

        var move = Move(before)!;

        Assert.StartsWith("line (", Assert.Single(move.Edits).NewText, StringComparison.Ordinal);
        Assert.True(Clears(before, Assessed(Edited(Text(lines), move)), Row(before)), move.Title);
    }

    [Fact]
    public void Who_works_in_inches_moves_by_twentieths_of_an_inch()
    {
        var text = Text([Line(0, -50, 0, 20, 300), Line(1, 0, 1, 12, 200), Line(2, 60, 0, 16, 240)]);
        var assessment = Assessment.Of("a.grove", SourceText.FromText(text), new NoFiles(), null, UnitSystem.Inch, TestContext.Current.CancellationToken);

        var move = Move(assessment)!;

        Assert.Matches(@"^move [ABC] \d+(\.\d+)? in toward \d+ deg$", move.Title);
        Assert.EndsWith(" in", move.Edits[0].NewText, StringComparison.Ordinal);
    }

    [Fact]
    public void The_search_ends_after_so_many_looks()
    {
        var assessment = Of([Line(0, -50, 0, 20, 300), Line(1, 0, 1, 12, 200), Line(2, 60, 0, 16, 240)]);

        Assert.NotNull(Move(assessment));
        Assert.Null(Move(assessment, looks: 3));
    }

    [Fact]
    public void The_search_can_be_ended()
    {
        var assessment = Of([Line(0, -50, 0, 20, 300), Line(1, 0, 1, 12, 200), Line(2, 60, 0, 16, 240)]);

        using var ended = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        ended.Cancel();

        Assert.Throws<OperationCanceledException>(() => SmallestMove.Find(assessment.ToContext(), Row(assessment), SmallestMove.MostLooks, ended.Token));
    }

    private static Checks.Remedy? Move(Assessment assessment, int looks = SmallestMove.MostLooks) => SmallestMove.Find(assessment.ToContext(), Row(assessment), looks, TestContext.Current.CancellationToken);

    private static Finding Row(Assessment assessment) => assessment.Findings.Single(finding => finding.Check.Name == "three-in-line");

    private static bool Clears(Assessment before, Assessment after, Finding finding)
    {
        var (old, now) = (Keys(before), Keys(after));
        return !now.Contains(Key(finding)) && now.All(old.Contains);
    }

    private static HashSet<string> Keys(Assessment assessment) => [.. assessment.Findings.Where(finding => finding.Check.IsComposition).Select(Key)];

    private static string Key(Finding finding) => $"{finding.Check.Name} {string.Join(' ', finding.Trunks)}";

    private static double Distance(Checks.Remedy move, (int X, int Y, int Diameter, int Height)[] trunks)
    {
        var name = move.Title.Split(' ')[1];
        var place = Place().Match(move.Edits[0].NewText);
        var from = trunks[name[0] - 'A'];
        return Math.Sqrt(Math.Pow(double.Parse(place.Groups[1].Value, CultureInfo.InvariantCulture) - from.X, 2) + Math.Pow(double.Parse(place.Groups[2].Value, CultureInfo.InvariantCulture) - from.Y, 2));
    }

    private static string Edited(string text, Checks.Remedy move) => move.Edits
        .OrderByDescending(edit => edit.Place.Span.Start)
        .Aggregate(text, (now, edit) => string.Concat(now.AsSpan(0, edit.Place.Span.Start), edit.NewText, now.AsSpan(edit.Place.Span.End)));

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Name(int index) => ((char)('A' + index)).ToString();

    private static string Line(int index, int x, int y, int diameter, int height) =>
        string.Create(CultureInfo.InvariantCulture, $"trunk {Name(index)} at {x}, {y} mm diameter {diameter} mm height {height} mm");

    private static string Text(string[] lines) => "planting \"T\"\nhabit group\ncontainer oval 300 x 200 x 40 mm\n" + string.Join('\n', lines) + "\n";

    private static Assessment Of(string[] lines) => Assessed(Text(lines));

    private static Assessment Assessed(string text) => Assessment.Of("a.grove", SourceText.FromText(text), new NoFiles());

    [GeneratedRegex(@"^at (-?[\d.]+), (-?[\d.]+) mm$")]
    private static partial Regex Place();
}
