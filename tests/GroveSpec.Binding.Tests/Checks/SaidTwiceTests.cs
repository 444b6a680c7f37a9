using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class SaidTwiceTests
{
    [Fact]
    public void The_second_habit_is_left_out()
    {
        var assessment = Planted.Under("habit clump");
        var finding = assessment.Only("said-twice");
        Assert.Equal("habit clump", assessment.Underlined(finding));
        Assert.Contains("the first holds", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_second_height_of_a_trunk_is_left_out()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm height 100 mm height 120 mm");
        var finding = assessment.Only("said-twice");
        Assert.Equal("height 120 mm", assessment.Underlined(finding));
        Assert.Contains("was said already of A", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_second_limit_of_a_check_is_left_out()
    {
        var assessment = Planted.Under("tolerance even-gaps 8 %\ntolerance even-gaps 9 %");
        var finding = assessment.Only("said-twice");
        Assert.Equal("tolerance even-gaps 9 %", assessment.Underlined(finding));
        Assert.Contains("was set already", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_second_mute_of_a_check_is_left_out()
    {
        var assessment = Planted.Under("mute even-gaps because \"a hedge\"\nmute even-gaps because \"still a hedge\"");
        var finding = assessment.Only("said-twice");
        Assert.Equal("mute even-gaps because \"still a hedge\"", assessment.Underlined(finding));
        Assert.Contains("muted already", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_aims_and_limits_of_a_role_are_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm role main\nrole main { aim height 400 mm by 2030 aim diameter 30 mm by 2030 keep height under 500 mm }").Found("said-twice"));
}
