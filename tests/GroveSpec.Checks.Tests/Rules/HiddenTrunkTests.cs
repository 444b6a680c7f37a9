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
}
