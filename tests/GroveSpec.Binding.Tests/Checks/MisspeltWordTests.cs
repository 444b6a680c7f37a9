using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class MisspeltWordTests
{
    [Fact]
    public void A_word_close_to_a_known_one_is_told()
    {
        var assessment = Planted.Under("trunc A at 0, 0 mm");
        Assert.Contains("trunk", assessment.Only("misspelt-word").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_known_word_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm").Found("misspelt-word"));
}
