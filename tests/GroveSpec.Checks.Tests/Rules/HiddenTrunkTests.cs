using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class HiddenTrunkTests
{
    [Fact]
    public void A_trunk_behind_a_wider_one_is_reported_with_the_share_that_is_covered()
    {
        var found = Check.Expect("hidden-trunk", """
            trunk N at 0, -100 mm diameter 40 mm
            trunk F at 4, 100 mm diameter 16 mm
            """, "F");
        Assert.Contains("F is hidden: seen from the front, N covers all of its width at the soil. Move it to the viewer's right by", Assert.Single(found).Message, StringComparison.Ordinal);
        Assert.Equal(100, found[0].Measured);
    }

    [Fact]
    public void A_trunk_beside_it_is_let_be()
    {
        Check.Expect("hidden-trunk", """
            trunk N at 0, -100 mm diameter 40 mm
            trunk F at 60, 100 mm diameter 16 mm
            """);
    }

    [Fact]
    public void At_the_very_limit_it_is_reported_and_above_it_is_not()
    {
        var assessment = Check.Of("""
            trunk N at 0, -100 mm diameter 40 mm
            trunk F at 18, 100 mm diameter 16 mm
            """);
        var context = new CheckContext(assessment.Planting, assessment.State, assessment.Origins, assessment.Units);
        var rule = new GroveSpec.Checks.Rules.HiddenTrunk();
        var share = Assert.Single(rule.Look(context, 1)).Measured!.Value;
        Assert.InRange(share, 20, 90);
        Assert.Single(rule.Look(context, share));
        Assert.Empty(rule.Look(context, Math.BitIncrement(share)));
    }

    [Fact]
    public void Moved_as_it_says_it_is_no_longer_reported()
    {
        var found = Check.Expect("hidden-trunk", """
            trunk N at 0, -100 mm diameter 40 mm
            trunk F at 4, 100 mm diameter 16 mm
            """, "F");
        var millimetres = int.Parse(found[0].Message.Split("right by ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Check.Expect("hidden-trunk", $"trunk N at 0, -100 mm diameter 40 mm\ntrunk F at {4 + millimetres}, 100 mm diameter 16 mm");
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk N at 0, -100 mm diameter 40 mm
            trunk F at 4, 100 mm diameter 16 mm
            """;
        Assert.Equal(
            "F is hidden: seen from the front, N covers all of its width at the soil. Move it to the viewer's right by 16 mm or more, or let it stand with a reason.",
            Check.Message("hidden-trunk", source));
        Assert.Equal(
            "F is hidden: seen from the front, N covers all of its width at the soil. Move it to the viewer's right by 0.63 in or more, or let it stand with a reason.",
            Check.Message("hidden-trunk", source, UnitSystem.Inch));
    }

    [Theory]
    [InlineData("19.658702", "19.658703", 0.7)]
    [InlineData("22.858904", "22.858905", 0.5)]
    [InlineData("16.458645", "16.458646", 0.9)]
    public void Where_the_covered_share_passes_the_limit_agrees_with_the_tangents_from_the_eye_to_a_nanometre(string last, string next, double limit)
    {
        // The tangents to a circle at x across and d ahead with the radius r have the slopes (x·d ± r·√(x² + d² − r²)) / (d² − r²).
        // The eye is 1500 mm from the middle, N 1400 mm from it and F 1600 mm; N covers F from F's left to N's right.
        Assert.InRange(Covered(Number(next)), 0, limit);
        Assert.InRange(Covered(Number(last)), limit, 1);
        var percent = limit * 100;
        Check.Expect("hidden-trunk", $"trunk N at 0, -100 mm diameter 40 mm\ntrunk F at {last}, 100 mm diameter 16 mm\ntolerance hidden-trunk {percent} %", "F");
        Check.Expect("hidden-trunk", $"trunk N at 0, -100 mm diameter 40 mm\ntrunk F at {next}, 100 mm diameter 16 mm\ntolerance hidden-trunk {percent} %");

        static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

        static double Covered(double across)
        {
            const double depth = 1600, radius = 8;
            var reach = radius * Math.Sqrt((across * across) + (depth * depth) - (radius * radius));
            var left = ((across * depth) - reach) / ((depth * depth) - (radius * radius));
            var right = ((across * depth) + reach) / ((depth * depth) - (radius * radius));
            return ((20 / Math.Sqrt((1400.0 * 1400) - 400)) - left) / (right - left);
        }
    }
}
