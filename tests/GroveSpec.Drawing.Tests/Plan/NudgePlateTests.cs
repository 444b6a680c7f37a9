using GroveSpec.Checks;
using GroveSpec.Checks.Nudging;
using GroveSpec.Drawing.Tests.Front;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Drawing.Tests.Plan;

public sealed class NudgePlateTests
{
    [Fact]
    public void No_two_labels_overlap_and_every_move_has_its_number_its_ring_and_its_arrow()
    {
        var drawn = 0;
        for (var seed = 1; seed <= 16; seed++)
        {
            var state = Plantings.Scattered(3 + (seed % 12), seed, 1 + (seed % 12), hasFindings: false).State;
            var answer = Nudging.Find(new CheckContext(state.Planting, state, new NoOrigins(), UnitSystem.Metric), NudgeWish.Usual(UnitSystem.Metric), 0.02, null, TestContext.Current.CancellationToken);
            foreach (var suggestion in answer.Suggestions)
            {
                drawn++;
                var svg = NudgePlate.Draw(state, suggestion, DrawingOptions.Default);
                var reader = new PlateReader(svg);
                var labels = reader.Labels.ToArray();
                for (var i = 0; i < labels.Length; i++)
                {
                    Assert.True(reader.Page.Grown(0.1).Holds(labels[i].Box), $"seed {seed}: {labels[i].Text} leaves the page");
                    for (var j = 0; j < i; j++)
                    {
                        Assert.False(labels[i].Box.Grown(-0.1).Overlaps(labels[j].Box), $"seed {seed}: {labels[i].Text} and {labels[j].Text} overlap");
                    }
                }

                Assert.Equal(2 * suggestion.Moves.Length, labels.Count(label => label.Class == "gs-move-mark-number"));
                Assert.Equal(suggestion.Moves.Length, Occurrences(svg, "class=\"gs-was\""));
                Assert.Equal(suggestion.Moves.Length, Occurrences(svg, "class=\"gs-way\""));
                Assert.Equal(svg, NudgePlate.Draw(state, suggestion, DrawingOptions.Default));
            }
        }

        Assert.True(drawn > 8);
    }

    private static int Occurrences(string text, string part) => text.Split(part).Length - 1;

    private sealed class NoOrigins : IOriginTable
    {
        public SourceSpan Locate(Origin origin) => new("", new TextSpan(0, 0));

        public SourceSpan StatementOf(Origin origin) => Locate(origin);

        public TextEdit WriteBehind(Origin origin, params ReadOnlySpan<string> lines) => new(Locate(origin), string.Join('\n', lines!));
    }
}
