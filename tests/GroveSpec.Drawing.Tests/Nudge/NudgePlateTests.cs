using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks.Nudging;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Drawing.Tests.Nudge;

public sealed class NudgePlateTests
{
    private const string Row = """
        planting "Row"
        habit group
        container rectangle 500 x 300 x 40 mm
        viewed from 180 deg, at 1500 mm, eye 250 mm
        trunk A at -120, -20 mm diameter 40 mm height 460 mm fixed
        trunk B at -30, 1 mm diameter 24 mm height 300 mm
        trunk C at 110, 30 mm diameter 12 mm height 170 mm fixed

        """;

    [Theory]
    [InlineData(25, 0)]
    [InlineData(-40, 30)]
    [InlineData(0, -60)]
    public void An_arrow_runs_from_the_old_foot_to_the_new(double right, double back)
    {
        var drawn = Draw(right, back);
        var was = Assert.Single(Of(drawn, "gs-was"));
        var way = Assert.Single(Of(drawn, "gs-way"));
        var points = Regex.Matches((string)way.Attribute("d")!, @"-?\d+(?:\.\d+)?").Select(number => double.Parse(number.Value, CultureInfo.InvariantCulture)).ToList();
        Assert.Equal((double)was.Attribute("cx")!, points[0], 0.2);
        Assert.Equal((double)was.Attribute("cy")!, points[1], 0.2);

        // That way: to the right on the page is right, and down is to the front. A line is written from where it begins.
        Assert.Matches("^M[^a-zA-Z]+l", (string)way.Attribute("d")!);
        var length = Math.Sqrt((points[2] * points[2]) + (points[3] * points[3]));
        var distance = Math.Sqrt((right * right) + (back * back));
        Assert.Equal(right / distance, points[2] / length, 0.02);
        Assert.Equal(-back / distance, points[3] / length, 0.02);
        Assert.Contains("Arrows run from there to where they go.", Told(drawn), StringComparison.Ordinal);
        Assert.DoesNotContain("whole ring", Told(drawn), StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_way_has_a_longer_arrow() => Assert.InRange(Length(Draw(60, 0)) / Length(Draw(30, 0)), 1.95, 2.05);

    [Fact]
    public void A_way_too_short_for_an_arrow_has_a_ring_round_the_trunk()
    {
        var drawn = Draw(2.4, 0);
        var ring = Assert.Single(Of(drawn, "gs-way"));
        Assert.Equal("circle", ring.Name.LocalName);
        Assert.True((double)ring.Attribute("r")! > (double)Assert.Single(Of(drawn, "gs-was")).Attribute("r")!);
        Assert.Contains("A whole ring is round one that goes too short a way for an arrow.", Told(drawn), StringComparison.Ordinal);
        Assert.DoesNotContain("Arrows", Told(drawn), StringComparison.Ordinal);
    }

    private static string Draw(double right, double back)
    {
        var planting = Assessment.Of("test.grove", SourceText.FromText(Row), new NoFiles(), null, UnitSystem.Metric);
        var place = PlanPoint.FromMillimetres(-30 + right, 1 + back);
        var from = PlanPoint.FromMillimetres(-30, 1);
        var suggestion = new NudgeSuggestion
        {
            Moves = [new("B", from.DistanceTo(place), from.BearingTo(place), place, null, null, IsMoved: true)],
            Distance = from.DistanceTo(place),
            State = planting.State with { Trunks = [.. planting.State.Trunks.Select(trunk => trunk.Name == "B" ? trunk with { Place = place } : trunk)] },
            Left = [],
            Why = "One trunk goes.",
            Edits = [],
        };
        return NudgePlate.Draw(planting.State, suggestion, DrawingOptions.Default);
    }

    private static double Length(string drawn)
    {
        var points = Regex.Matches((string)Assert.Single(Of(drawn, "gs-way")).Attribute("d")!, @"-?\d+(?:\.\d+)?").Select(number => double.Parse(number.Value, CultureInfo.InvariantCulture)).ToList();
        return Math.Abs(points[2]);
    }

    private static IEnumerable<XElement> Of(string drawn, string style) => XDocument.Parse(drawn).Descendants().Where(element => (string?)element.Attribute("class") == style);

    private static string Told(string drawn) => string.Join(' ', XDocument.Parse(drawn).Descendants().Where(element => element.Name.LocalName == "text").Select(text => text.Value));
}
