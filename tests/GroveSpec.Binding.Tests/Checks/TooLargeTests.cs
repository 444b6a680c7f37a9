using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class TooLargeTests
{
    [Fact]
    public void A_usual_file_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm").Found("too-large"));

    [Fact]
    public void A_word_of_ten_million_letters_is_told()
    {
        var assessment = Planted.Under("trunk " + new string('a', 10_000_000));
        Assert.NotEmpty(assessment.Found("too-large"));
    }
}
