using GroveSpec.Checks.Standing;
using GroveSpec.Craft.Stand;
using GroveSpec.Drawing.Scene;
using GroveSpec.Drawing.Tests.Front;
using GroveSpec.Model.States;
using Xunit;

namespace GroveSpec.Drawing.Tests.Stand;

public sealed class StandPlateTests
{
    [Fact]
    public void No_two_labels_overlap_and_every_number_has_its_mark_filled_only_where_it_can_be_told_from_chance()
    {
        var (told, open) = (0, 0);
        for (var seed = 1; seed <= 24; seed++)
        {
            var state = State(2 + (seed % 14), seed);
            var described = StandDescription.Of(state);
            var svg = StandPlate.Draw(state, described, DrawingOptions.Default);
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

            Assert.Equal(described.Indices.Length, reader.Of("gs-row").Count());
            Assert.Equal(described.Indices.Count(index => index.Value is not null && index.Reading != StandReading.CannotTell), reader.Of("gs-value-told").Count());
            Assert.Equal(described.Indices.Count(index => index.Value is not null && index.Reading == StandReading.CannotTell), reader.Of("gs-value-open").Count());
            Assert.Equal(described.Indices.Count(index => index.Chance is not null), reader.Of("gs-chance").Count());
            Assert.Equal(svg, StandPlate.Draw(state, described, DrawingOptions.Default));
            (told, open) = (told + reader.Of("gs-value-told").Count(), open + reader.Of("gs-value-open").Count());
        }

        Assert.True(told > 3 && open > 30, $"{told} told, {open} not");
    }

    [Fact]
    public void Real_stands_stand_at_their_values_and_are_named()
    {
        var state = State(9, 3);
        var reader = new PlateReader(StandPlate.Draw(state, StandDescription.Of(state), DrawingOptions.Default));

        // Four in each of two rows, one in each of two (docs/stand.md says which were taken).
        Assert.Equal(10, reader.Of("gs-real").Count());
        Assert.Equal(10, reader.Labels.Count(label => label.Class == "gs-real-name"));
        Assert.Equal(4, reader.Labels.Count(label => label.Text == "Finnish pines"));
    }

    [Fact]
    public void Of_one_trunk_the_plate_says_that_there_is_nothing_to_tell_yet()
    {
        var state = State(1, 1);
        var reader = new PlateReader(StandPlate.Draw(state, StandDescription.Of(state), DrawingOptions.Default));
        Assert.Empty(reader.Of("gs-row"));
        Assert.Contains("there is nothing to tell yet", string.Join(' ', reader.Labels.Select(label => label.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_sentences_are_told_elsewhere_only_the_rows_are_drawn()
    {
        var state = State(9, 3);
        var described = StandDescription.Of(state);
        Assert.NotEmpty(new PlateReader(StandPlate.Draw(state, described, DrawingOptions.Default)).Of("gs-key"));
        Assert.Empty(new PlateReader(StandPlate.Draw(state, described, DrawingOptions.Default with { TellsFindings = false })).Of("gs-key"));
    }

    [Fact]
    public void A_row_that_tells_nothing_says_why_where_sentences_are_told_elsewhere_too()
    {
        // Three trunks are too few for four neighbours; of five each has all others for neighbours.
        Assert.Equal(2, Reasons(3));
        Assert.Equal(1, Reasons(5));
        Assert.Equal(0, Reasons(6));

        static int Reasons(int count)
        {
            var state = State(count, 3);
            var reader = new PlateReader(StandPlate.Draw(state, StandDescription.Of(state), DrawingOptions.Default with { TellsFindings = false }));
            var labels = reader.Labels.ToArray();
            Assert.All(labels, label => Assert.True(reader.Page.Holds(label.Box) && !labels.Any(other => other != label && other.Box.Grown(-0.1).Overlaps(label.Box)), label.Text));
            return labels.Count(label => label.Text.StartsWith("Cannot tell: ", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Both_ends_of_each_scale_are_named_beside_their_numbers()
    {
        var state = State(9, 3);
        var labels = new PlateReader(StandPlate.Draw(state, StandDescription.Of(state), DrawingOptions.Default with { TellsFindings = false })).Labels.ToArray();
        foreach (var kind in Enum.GetValues<StandIndexKind>())
        {
            var (least, greatest) = StandWords.Ends(kind);
            Assert.Contains(labels, end => end.Text == least && labels.Any(number => number.Text == "0" && IsBeside(number.Box, end.Box)));
            Assert.Contains(labels, end => end.Text == greatest && labels.Any(number => number.Class == "gs-number" && number.Text != "0" && IsBeside(end.Box, number.Box)));
        }

        static bool IsBeside(Box left, Box right) => right.Left - left.Right is > 0 and < 12 && Math.Abs(left.Bottom - right.Bottom) < 1;
    }

    private static PlantingState State(int count, int seed) => Plantings.Scattered(count, seed, 1 + (seed % 12), hasFindings: false).State;
}
