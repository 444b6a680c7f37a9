using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UseCircleTests
{
    [Fact]
    public void A_circle_through_three_files_is_told_where_it_closes()
    {
        var files = new FilesInMemory(new()
        {
            ["a.grove"] = "use \"b.grove\"\n",
            ["b.grove"] = "use \"c.grove\"\n",
            ["c.grove"] = "use \"a.grove\"\nrole lee { rank 1 }\n",
        });
        var assessment = Planted.Under("use \"a.grove\"\n", files);
        var finding = assessment.Only("use-circle");
        Assert.Equal("c.grove", finding.Place.File);
        Assert.Equal("\"a.grove\"", assessment.Underlined(finding));
        Assert.Equal("lee", Assert.Single(assessment.Planting.Roles).Name);
    }

    [Fact]
    public void A_file_that_uses_itself_is_told()
    {
        var files = new FilesInMemory(new() { ["a.grove"] = "use \"a.grove\"\n" });
        Assert.Contains("this file itself", Planted.Under("use \"a.grove\"\n", files).Only("use-circle").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_files_may_use_a_third()
    {
        var files = new FilesInMemory(new()
        {
            ["a.grove"] = "use \"c.grove\"\n",
            ["b.grove"] = "use \"c.grove\"\n",
            ["c.grove"] = "role lee { rank 1 }\n",
        });
        var assessment = Planted.Under("use \"a.grove\"\nuse \"b.grove\"\n", files);
        Assert.DoesNotContain(assessment.Findings, finding => !finding.Check.IsComposition);
        Assert.Single(assessment.Planting.Roles);
    }
}
