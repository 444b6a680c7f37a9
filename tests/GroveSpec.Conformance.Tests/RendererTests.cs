using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using GroveSpec.Conformance.Tests.Pictures;
using Xunit;

namespace GroveSpec.Conformance.Tests;

/// <summary>Every sample looks the same in Chromium, in Skia (our own pictures) and in librsvg, within the stated difference of <see cref="PictureDifference"/>.</summary>
public sealed class RendererTests
{
    [Fact]
    public void Chromium_and_Skia_draw_every_sample_alike()
    {
        OutsideProgram.Chromium.Require();
        var inBrowser = Renderers.Chromium([.. SampleDrawings.WithFaces.Select(drawing => drawing.Svg)]);
        var differences = SampleDrawings.WithFaces.Select((drawing, i) => Told(drawing, PictureDifference.Between(Renderers.Skia(drawing.Svg), inBrowser[i]))).ToArray();
        AssertAlike(differences);
    }

    [Fact]
    public void Librsvg_and_Skia_draw_every_sample_alike()
    {
        OutsideProgram.Librsvg.Require();
        var differences = SampleDrawings.All.Select(drawing => Told(drawing, PictureDifference.Between(Renderers.Skia(drawing.Svg), Renderers.Librsvg(drawing.Svg)))).ToArray();
        AssertAlike(differences);
    }

    [Fact]
    public void A_missing_trunk_is_told_apart()
    {
        OutsideProgram.Librsvg.Require();
        var file = SampleFile.Named("mill-race");
        var text = File.ReadAllText(file.Path);
        foreach (var view in new[] { "plan", "front" })
        {
            var whole = Plates.Draw(view, Plates.SubjectOf(text));
            var lines = text.Split('\n').Where(line => !line.StartsWith("trunk F", StringComparison.Ordinal));
            var without = Plates.Draw(view, Plates.SubjectOf(string.Join('\n', lines)));
            var difference = PictureDifference.Between(Renderers.Skia(whole), Renderers.Librsvg(without));
            Assert.True(difference.WorstTile > PictureDifference.TileLimit, $"{view}: a missing trunk makes {difference}");
        }
    }

    private static (string Name, PictureDifference Difference) Told(SampleDrawing drawing, PictureDifference difference) => ($"{drawing.Sample} {drawing.View}", difference);

    private static void AssertAlike((string Name, PictureDifference Difference)[] differences)
    {
        Assert.NotEmpty(differences);
        var far = differences.Where(entry => !entry.Difference.IsAlike).ToArray();
        TestContext.Current.TestOutputHelper?.WriteLine($"largest mean {differences.Max(entry => entry.Difference.Mean):0.00}, largest tile {differences.Max(entry => entry.Difference.WorstTile):0.0}");
        Assert.True(far.Length == 0, string.Join('\n', far));
    }
}
