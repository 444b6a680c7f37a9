using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class OffContainerTests
{
    [Fact]
    public void Bark_past_the_rim_is_an_error_with_how_far_it_reaches()
    {
        var found = Check.Expect("off-container", """
            trunk A at 294, 0 mm diameter 20 mm
            """, "A");
        Assert.Equal(Severity.Error, Assert.Single(found).Severity);
        Assert.Contains("The bark of A reaches 4 mm past the rim", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_outside_is_told_so()
    {
        Assert.Contains("A stands outside the container, and its bark reaches 60 mm past the rim", Assert.Single(Check.Expect("off-container", "trunk A at 350, 0 mm diameter 20 mm", "A")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_inside_is_let_be()
    {
        Check.Expect("off-container", """
            trunk A at 200, 0 mm diameter 20 mm
            """);
    }

    [Fact]
    public void Bark_that_just_meets_the_rim_is_let_be_and_a_nanometre_beyond_is_reported()
    {
        Check.Expect("off-container", """
            trunk A at 290, 0 mm diameter 20 mm
            """);
        Check.Expect("off-container", """
            trunk A at 290.000001, 0 mm diameter 20 mm
            """, "A");
    }
}
