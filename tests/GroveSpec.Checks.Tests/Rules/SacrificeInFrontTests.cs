using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice: low and on the back, so that the scar does not show.</summary>
public sealed class SacrificeInFrontTests
{
    private const string Name = "sacrifice-in-front";

    [Theory]
    [InlineData("facing front", true)]
    [InlineData("facing 91 deg", true)]
    [InlineData("facing right", false)]
    [InlineData("facing left", false)]
    [InlineData("facing 269 deg", true)]
    [InlineData("facing back", false)]
    [InlineData("", false)]
    public void A_branch_on_the_viewers_side_is_told(string side, bool isTold) => Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, Source(side)).Length);

    [Fact]
    public void The_angle_to_the_viewer_is_said_and_the_remedy_turns_the_branch_to_the_back()
    {
        var source = Source("low, facing 215 deg");
        var finding = CareSource.Hit(Name, source);
        Assert.Equal((35, 90, "deg"), (finding.Measured, finding.Limit, finding.Unit));
        Assert.Equal("The branch of S (sacrifice) on A stands 35 deg from the viewer's side, and its scar will show. Choose one on the back (facing back), or let it stand with a reason.", finding.Message);
        var mended = CareSource.Mended(source, finding.Remedies[0]);
        Assert.Contains("low, facing back", mended, StringComparison.Ordinal);
        CareSource.Miss(Name, mended);
        CareSource.Miss(Name, CareSource.Mended(source, finding.Remedies[^1]));
    }

    [Fact]
    public void The_viewer_may_stand_elsewhere_and_then_the_back_is_elsewhere_too()
    {
        var source = Source("facing right").Replace("viewed from 180 deg", "viewed from 70 deg", StringComparison.Ordinal);
        var finding = CareSource.Hit(Name, source);
        Assert.Equal(20, finding.Measured);
        Assert.Contains("facing 250 deg", CareSource.Mended(source, finding.Remedies[0]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("facing 226 deg", false)]
    [InlineData("facing 225 deg", false)]
    [InlineData("facing 224 deg", true)]
    public void A_tolerance_moves_the_limit(string side, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, Source(side) + "tolerance sacrifice-in-front 45 deg\n").Length);

    private static string Source(string side) => CareSource.Of("acer-palmatum", $"task S sacrifice on A from leaf-out 2027 to leaf-fall 2029 {side}\ntask O remove-sacrifice of S in late winter 2030");
}
