using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UseOutsideFolderTests
{
    [Fact]
    public void A_path_to_the_folder_above_is_told()
    {
        var assessment = Planted.Under("use \"../../secret\"");
        var finding = assessment.Only("use-outside-folder");
        Assert.Equal("\"../../secret\"", assessment.Underlined(finding));
        Assert.Contains("leads out of this file's folder", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_absolute_path_is_told()
    {
        var assessment = Planted.Under("use \"/etc/passwd\"");
        var finding = assessment.Only("use-outside-folder");
        Assert.Equal("\"/etc/passwd\"", assessment.Underlined(finding));
        Assert.Contains("begins at the root", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_path_with_a_drive_is_told()
    {
        var assessment = Planted.Under("use \"C:/roles.grove\"");
        var finding = assessment.Only("use-outside-folder");
        Assert.Equal("\"C:/roles.grove\"", assessment.Underlined(finding));
        Assert.Contains("names a drive", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_path_with_backslashes_is_told()
    {
        var assessment = Planted.Under("use \"..\\\\roles.grove\"");
        var finding = assessment.Only("use-outside-folder");
        Assert.Equal("\"..\\\\roles.grove\"", assessment.Underlined(finding));
        Assert.Contains("backslashes", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_address_is_told()
    {
        var assessment = Planted.Under("use \"file:///etc/passwd\"");
        var finding = assessment.Only("use-outside-folder");
        Assert.Equal("\"file:///etc/passwd\"", assessment.Underlined(finding));
        Assert.Contains("is an address", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_web_address_is_told()
    {
        var assessment = Planted.Under("use \"https://example.org/roles.grove\"");
        var finding = assessment.Only("use-outside-folder");
        Assert.Equal("\"https://example.org/roles.grove\"", assessment.Underlined(finding));
        Assert.Contains("is an address", finding.Message, StringComparison.Ordinal);
    }
}
