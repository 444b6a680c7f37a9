using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class WrongTaskTests
{
    [Fact]
    public void Wire_taken_off_where_none_was_put_is_told()
    {
        var assessment = Planted.Under("task R repot on all in spring 2027\ntask U unwire of R");
        var finding = assessment.Only("wrong-task");
        Assert.Equal("R", assessment.Underlined(finding));
        Assert.Contains("puts none on", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sacrifice_removed_where_none_grew_is_told()
    {
        var assessment = Planted.Under("task R repot on all in spring 2027\ntask S remove-sacrifice of R");
        var finding = assessment.Only("wrong-task");
        Assert.Equal("R", assessment.Underlined(finding));
        Assert.Contains("lets none grow", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Wire_taken_off_where_it_was_put_is_not_told() => Assert.Empty(Planted.Under("task W wire on all in autumn 2026\ntask U unwire of W").Found("wrong-task"));
}
