using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UseTooLargeTests
{
    [Fact]
    public void A_used_file_above_four_megabytes_is_told()
    {
        var files = new FilesInMemory(new() { ["r.grove"] = new string('#', (4 * 1024 * 1024) + 1) });
        Assert.Equal("\"r.grove\"", Planted.Under("use \"r.grove\"\n", files) is var assessment ? assessment.Underlined(assessment.Only("use-too-large")) : "");
    }

    [Fact]
    public void A_small_file_is_not_told()
    {
        var files = new FilesInMemory(new() { ["r.grove"] = "# nothing\n" });
        Assert.Empty(Planted.Under("use \"r.grove\"\n", files).Found("use-too-large"));
    }
}
