using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class OddCharacterTests
{
    [Fact]
    public void A_mark_that_turns_the_direction_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm # \u202E");
        Assert.NotEmpty(assessment.Found("odd-character"));
    }

    [Fact]
    public void Letters_of_any_script_are_not_told() => Assert.Empty(Planted.Under("concept \"\u6797\"").Found("odd-character"));
}
