using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks.Choosing;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Text;
using NodaTime;
using Xunit;

namespace GroveSpec.Checks.Tests.Choosing;

public sealed class ThinningEditsTests
{
    private static readonly LocalDate Day = new(2027, 3, 14);

    private const string Stool = """
        planting "Stool"   # kept as it is
        habit clump
        container oval 420 x 280 x 40 mm
        trunk A at -90, -35 mm diameter 30 mm   height 410 mm  # the main one
        trunk B at -40, -40 mm diameter 22 mm
        trunk C at 0, 20 mm diameter 18 mm removed 2031-02-01
        trunk D at 40, -20 mm diameter 12 mm
        measured 2026-10-01 {
          A diameter 30 mm
        }
        """;

    [Fact]
    public void On_a_hundred_stools_those_that_go_are_out_from_that_day_on_and_not_a_day_before()
    {
        for (var seed = 0; seed < 100; seed++)
        {
            var source = StoolSource.Of(seed, 4 + (seed % 6));
            var before = Check.Of(source);
            var answer = Thinning.Choose(before.ToContext(), new ThinningWish(3, 3, [], []), cancellation: TestContext.Current.CancellationToken);
            foreach (var suggestion in answer.Suggestions)
            {
                var edits = ThinningEdits.Of(before.ToContext(), before.Tree, suggestion.Stand, Day);
                var text = TextEdits.Apply(before.Tree.Text.Content, edits);
                Assert.Equal(suggestion.Stand.TakenOut.Length, edits.Length);
                Assert.Equal(suggestion.Stand.Kept, Standing(text, Day));
                Assert.Equal(Standing(source, Day.PlusDays(-1)), Standing(text, Day.PlusDays(-1)));
            }
        }
    }

    [Fact]
    public void Only_those_lines_change_and_a_later_day_gives_way_to_the_new_one()
    {
        var before = On(Stool, new LocalDate(2026, 10, 1));
        var answer = Thinning.Choose(before.ToContext(), new ThinningWish(2, 2, ["A"], ["C"]), cancellation: TestContext.Current.CancellationToken);
        var text = TextEdits.Apply(before.Tree.Text.Content, ThinningEdits.Of(before.ToContext(), before.Tree, answer.Suggestions[0].Stand, Day));
        string[] was = Stool.Split('\n'), now = text.Split('\n');
        Assert.Equal(was.Length, now.Length);
        Assert.Equal(2, Enumerable.Range(0, was.Length).Count(line => was[line] != now[line]));
        Assert.Contains("trunk C at 0, 20 mm diameter 18 mm removed 2027-03-14", now);
        Assert.DoesNotContain("2031", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_could_not_be_read_whole_is_left_alone()
    {
        var source = Stool.Replace("trunk C at 0, 20 mm diameter 18 mm removed 2031-02-01", "trunk C at 0, 20 mm diameter thick", StringComparison.Ordinal);
        var before = Check.Of(source);
        var answer = Thinning.Choose(before.ToContext(), new ThinningWish(3, 3, [], ["C"]), cancellation: TestContext.Current.CancellationToken);
        Assert.Contains("C", answer.Suggestions[0].Stand.TakenOut);
        Assert.Empty(ThinningEdits.Of(before.ToContext(), before.Tree, answer.Suggestions[0].Stand, Day));
    }

    private static IEnumerable<string> Standing(string source, LocalDate day) =>
        On(source, day).State.Trunks.Where(trunk => trunk.Presence == Presence.Standing).Select(trunk => trunk.Name).Order(StringComparer.Ordinal);

    private static Assessment On(string source, LocalDate day) => Assessment.Of("test.grove", SourceText.FromText(source), new NoFiles(), day);
}
