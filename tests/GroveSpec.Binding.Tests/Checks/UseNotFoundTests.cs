using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UseNotFoundTests
{
    [Fact]
    public void A_file_that_is_not_there_is_told()
    {
        var assessment = Planted.Under("use \"roles.grove\"");
        var finding = assessment.Only("use-not-found");
        Assert.Equal("\"roles.grove\"", assessment.Underlined(finding));
        Assert.Contains("There is no file", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_is_told()
    {
        var assessment = Planted.Under("use \"lib/\"");
        var finding = assessment.Only("use-not-found");
        Assert.Equal("\"lib/\"", assessment.Underlined(finding));
        Assert.Contains("is a folder", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_name_is_told()
    {
        var assessment = Planted.Under("use \"\"");
        var finding = assessment.Only("use-not-found");
        Assert.Equal("\"\"", assessment.Underlined(finding));
        Assert.Contains("No file is named", finding.Message, StringComparison.Ordinal);
    }
}
