using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using Xunit;

namespace GroveSpec.Conformance.Tests;

/// <summary>
/// No two labels of a drawing overlap and none leaves its page, as Chromium sets them: in the face that drawings ask for,
/// and in a plain one as it is found where that face is missing.
/// </summary>
public sealed class LabelTests
{
    private const string OwnFace = "EB Garamond";

    // Cut to the widths of Times New Roman, which drawings name next after Garamond.
    private const string PlainFace = "Liberation Serif";

    [Fact]
    public void Labels_of_every_sample_stand_free()
    {
        OutsideProgram.Chromium.Require();
        var drawings = SampleDrawings.All.Select(drawing => ($"{drawing.Sample} {drawing.View}", drawing.Svg));
        var (troubles, count, smallest) = LabelMeasure.Of(drawings, OwnFace, PlainFace);
        Assert.True(count > 500, $"only {count} labels were found");
        Assert.True(smallest >= 11, $"the smallest label is {smallest} px");
        Assert.True(troubles.Length == 0, string.Join('\n', troubles));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Labels_of_fifty_generated_plantings_stand_free(int quarter)
    {
        OutsideProgram.Chromium.Require();
        List<(string, string)> drawings = [];
        for (var seed = quarter * 50; seed < (quarter + 1) * 50; seed++)
        {
            var subject = Plates.SubjectOf(GeneratedPlanting.Text(seed));
            drawings.AddRange(Plates.Views.Select(view => ($"planting of seed {seed} {view}", Plates.Draw(view, subject))));
        }

        var (troubles, count, smallest) = LabelMeasure.Of(drawings, OwnFace, PlainFace);
        Assert.True(count > 10_000, $"only {count} labels were found");
        Assert.True(smallest >= 11, $"the smallest label is {smallest} px");
        Assert.True(troubles.Length == 0, $"{troubles.Length} troubles:\n" + string.Join('\n', troubles.Take(40)));
    }
}
