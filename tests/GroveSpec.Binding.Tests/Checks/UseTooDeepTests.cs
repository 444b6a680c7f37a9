using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UseTooDeepTests
{
    [Fact]
    public void A_chain_of_ten_thousand_files_is_followed_thirty_two_deep()
    {
        var files = new FilesInMemory(Enumerable.Range(0, 10_000).ToDictionary(index => $"f{index}.grove", index => $"use \"f{index + 1}.grove\"\n"));
        var finding = Planted.Under("use \"f0.grove\"\n", files).Only("use-too-deep");
        Assert.Equal("f31.grove", finding.Place.File);
        Assert.Equal(32, files.Count);
    }

    [Fact]
    public void A_chain_of_thirty_two_files_is_followed_to_its_end()
    {
        var files = new FilesInMemory(Enumerable.Range(0, 32).ToDictionary(index => $"f{index}.grove", index => index == 31 ? "role lee { rank 1 }\n" : $"use \"f{index + 1}.grove\"\n"));
        var assessment = Planted.Under("use \"f0.grove\"\n", files);
        Assert.Empty(assessment.Found("use-too-deep"));
        Assert.Single(assessment.Planting.Roles);
    }

    [Fact]
    public void No_more_than_256_files_are_read()
    {
        var files = new FilesInMemory(Enumerable.Range(0, 300).ToDictionary(index => $"f{index}.grove", index => $"role r{index} {{ rank 1 }}\n"));
        var assessment = Planted.Under(string.Concat(Enumerable.Range(0, 300).Select(index => $"use \"f{index}.grove\"\n")), files);
        Assert.Equal(256, assessment.Planting.Roles.Length);
        Assert.NotEmpty(assessment.Found("use-too-deep"));
    }

    [Theory]
    [InlineData("use \"roles.grove\"\n")]
    [InlineData("use \"gone.grove\"\n")]
    public void One_file_named_over_and_over_is_not_read_over_and_over(string statement)
    {
        var files = new FilesInMemory(new() { ["roles.grove"] = "role lee { rank 1 }\n" });
        var assessment = Planted.Under(string.Concat(Enumerable.Repeat(statement, 300)), files);
        Assert.Equal(256, files.Count);
        Assert.Equal(44, assessment.Found("use-too-deep").Length);
    }
}
