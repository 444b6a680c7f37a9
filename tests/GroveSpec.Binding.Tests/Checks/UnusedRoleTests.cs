using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UnusedRoleTests
{
    [Fact]
    public void A_role_that_no_trunk_plays_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\nrole lee { rank 3 }");
        var finding = assessment.Only("unused-role");
        Assert.Equal("lee", assessment.Underlined(finding));
        Assert.Contains("No trunk plays the role lee", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_role_that_is_played_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm role lee\nrole lee { rank 3 }").Found("unused-role"));

    [Fact]
    public void A_file_of_roles_alone_is_not_told() => Assert.Empty(Planted.Under("role lee { rank 3 }").Found("unused-role"));
}
