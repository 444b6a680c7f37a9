using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class NotUnderstoodTests
{
    [Fact]
    public void A_line_that_begins_no_statement_is_told()
    {
        var assessment = Planted.Under("99 bottles");
        Assert.NotEmpty(assessment.Found("not-understood"));
    }

    [Fact]
    public void An_empty_line_is_not_told() => Assert.Empty(Planted.Under("").Found("not-understood"));
}
