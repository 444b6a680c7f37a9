using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class NotClosedTests
{
    [Fact]
    public void A_text_without_an_end_is_told()
    {
        var assessment = Planted.Under("concept \"the wind");
        Assert.NotEmpty(assessment.Found("not-closed"));
    }

    [Fact]
    public void A_text_with_an_end_is_not_told() => Assert.Empty(Planted.Under("concept \"the wind\"").Found("not-closed"));
}
