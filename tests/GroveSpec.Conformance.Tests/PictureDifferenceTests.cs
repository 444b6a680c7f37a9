using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using GroveSpec.Conformance.Tests.Pictures;
using Xunit;

namespace GroveSpec.Conformance.Tests;

/// <summary>The measure of pictures can fail, and lets pass what it should.</summary>
public sealed class PictureDifferenceTests
{
    private const string Circle = "<circle cx='60' cy='50' r='9' fill='none' stroke='#26302b' stroke-width='3'/>";

    [Fact]
    public void A_picture_differs_from_itself_by_nothing()
    {
        var picture = Renderers.Skia(Drawing(Circle));
        Assert.Equal(new PictureDifference(0, 0), PictureDifference.Between(picture, picture));
    }

    [Fact]
    public void Three_renderers_draw_a_ring_and_a_word_alike()
    {
        OutsideProgram.Chromium.Require();
        OutsideProgram.Librsvg.Require();
        var drawing = Drawing(Circle);
        var picture = Renderers.Skia(drawing);
        foreach (var other in new[] { Renderers.Librsvg(drawing), Renderers.Chromium([Drawing(Circle, BuiltInFaces.Rules)])[0] })
        {
            var difference = PictureDifference.Between(picture, other);
            Assert.True(difference.IsAlike, difference.ToString());
        }
    }

    [Fact]
    public void A_missing_ring_is_told_apart()
    {
        OutsideProgram.Librsvg.Require();
        var difference = PictureDifference.Between(Renderers.Skia(Drawing(Circle)), Renderers.Librsvg(Drawing("")));
        Assert.True(difference.WorstTile > PictureDifference.TileLimit, difference.ToString());
    }

    private static string Drawing(string content, string faceRules = "") => $$"""
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200" width="300" height="200">
        <style>{{faceRules}}text{font-family:'EB Garamond',serif}</style>
        <rect width="300" height="200" fill="#fcfbf7"/>{{content}}<text x="100" y="60" font-size="24">Mill Race</text>
        </svg>
        """;
}
