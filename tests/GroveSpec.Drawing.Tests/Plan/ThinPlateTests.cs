using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Checks.Choosing;
using GroveSpec.Drawing.Tests.Front;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Drawing.Tests.Plan;

public sealed class ThinPlateTests
{
    [Fact]
    public void No_two_labels_overlap_on_the_plan_of_a_choice_and_each_trunk_that_goes_has_its_cross()
    {
        foreach (var (seed, state, answer) in Answers())
        {
            foreach (var suggestion in answer.Suggestions)
            {
                var svg = ThinPlate.Draw(state, suggestion, DrawingOptions.Default);
                NothingOverlaps(svg, $"seed {seed}");
                Assert.Equal(suggestion.Stand.TakenOut.Length, Occurrences(svg, "class=\"gs-cut\""));
                Assert.Equal(svg, ThinPlate.Draw(state, suggestion, DrawingOptions.Default));
            }
        }
    }

    [Fact]
    public void Side_by_side_no_two_labels_overlap_and_each_choice_has_its_number_and_its_crosses()
    {
        foreach (var (seed, state, answer) in Answers())
        {
            var svg = ThinPlate.DrawAll(state, answer, DrawingOptions.Default);
            NothingOverlaps(svg, $"seed {seed}");
            Assert.Equal(answer.Suggestions.Sum(suggestion => suggestion.Stand.TakenOut.Length), Occurrences(svg, "class=\"gs-cut\""));
            Assert.Equal(svg, ThinPlate.DrawAll(state, answer, DrawingOptions.Default));
        }
    }

    [Theory]
    [InlineData(5, 3, 1)]
    [InlineData(12, 9, 1)]
    [InlineData(24, 21, 1)]
    [InlineData(24, 21, 12)]
    [InlineData(24, 22, 40)]
    [InlineData(32, 31, 6)]
    public void No_sentence_is_cut_short_and_every_trunk_has_its_name_in_each_choice(int count, int keep, int nameLength)
    {
        var state = Plantings.Scattered(count, 11, nameLength, widthMm: 500, hasFindings: false).State;
        var without = count > 24 ? state.Trunks.Take(count - 24).Select(trunk => trunk.Name).ToImmutableArray() : [];
        keep -= without.Length;
        var answer = Thinning.Choose(new CheckContext(state.Planting, state, new NoOrigins(), UnitSystem.Metric), new ThinningWish(keep, keep, [], without), cancellation: TestContext.Current.CancellationToken);
        Assert.NotEmpty(answer.Suggestions);

        var svg = ThinPlate.DrawAll(state, answer, DrawingOptions.Default);
        NothingOverlaps(svg, $"{count} trunks");
        var reader = new PlateReader(svg);
        var names = reader.Labels.Where(label => label.Class is "gs-name" or "gs-name-gone").ToArray();
        Assert.Equal(answer.Suggestions.Length * state.Trunks.Length, names.Length);
        Assert.DoesNotContain(reader.Labels, label => label.Text.EndsWith('…') && !label.Class.StartsWith("gs-name", StringComparison.Ordinal));
        foreach (var suggestion in answer.Suggestions)
        {
            Assert.Contains(suggestion.Why, Told(reader, "gs-key"), StringComparison.Ordinal);
            Assert.Contains(ThinningWords.NearlyAsGood(suggestion), Told(reader, "gs-key"), StringComparison.Ordinal);
            if (suggestion.Stand.Found > 0)
            {
                Assert.Contains(suggestion.Stand.Kinds, Told(reader, "gs-remark"), StringComparison.Ordinal);
            }

            var one = new PlateReader(ThinPlate.Draw(state, suggestion, DrawingOptions.Default));
            Assert.Contains(suggestion.Why, Told(one, "gs-key"), StringComparison.Ordinal);
        }
    }

    private static string Told(PlateReader reader, string cls) => string.Join(' ', reader.Labels.Where(label => label.Class == cls).Select(label => label.Text));

    [Fact]
    public void What_is_told_beside_the_picture_is_left_out_of_it()
    {
        var (_, state, answer) = Answers().First();
        var svg = ThinPlate.Draw(state, answer.Suggestions[0], DrawingOptions.Default with { TellsFindings = false });
        Assert.DoesNotContain("class=\"gs-key\"", svg, StringComparison.Ordinal);
    }

    private static IEnumerable<(int Seed, PlantingState State, ThinningAnswer Answer)> Answers()
    {
        for (var seed = 1; seed <= 20; seed++)
        {
            var count = 3 + (seed % 18);
            var state = Plantings.Scattered(count, seed, 1 + (seed % 12), hasFindings: false).State;
            var keep = Math.Max(1, count - 1 - (seed % 4));
            var answer = Thinning.Choose(new CheckContext(state.Planting, state, new NoOrigins(), UnitSystem.Metric), new ThinningWish(keep, keep, [], []), cancellation: TestContext.Current.CancellationToken);
            if (answer.Suggestions.Length > 0)
            {
                yield return (seed, state, answer);
            }
        }
    }

    private static void NothingOverlaps(string svg, string says)
    {
        var reader = new PlateReader(svg);
        var labels = reader.Labels.ToArray();
        for (var i = 0; i < labels.Length; i++)
        {
            Assert.True(reader.Page.Grown(0.1).Holds(labels[i].Box), $"{says}: {labels[i].Text} leaves the page");
            for (var j = 0; j < i; j++)
            {
                Assert.False(labels[i].Box.Grown(-0.1).Overlaps(labels[j].Box), $"{says}: {labels[i].Text} and {labels[j].Text} overlap");
            }
        }
    }

    private static int Occurrences(string text, string part) => text.Split(part).Length - 1;

    private sealed class NoOrigins : IOriginTable
    {
        public SourceSpan Locate(Origin origin) => new("", new TextSpan(0, 0));

        public SourceSpan StatementOf(Origin origin) => Locate(origin);

        public TextEdit WriteBehind(Origin origin, params ReadOnlySpan<string> lines) => new(Locate(origin), string.Join('\n', lines!));
    }
}
