using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class NotSharedTests
{
    [Fact]
    public void A_trunk_in_a_used_file_is_told_and_the_rest_is_taken()
    {
        var files = new FilesInMemory(new() { ["lib/r.grove"] = "trunk Z at 0, 0 mm\ntrunk Y at 0, 0 mm\nrole lee { aim height 1 ft by 2030 }\ntolerance even-gaps 9 %\nprofile apple { leaves deciduous from memory }\n" });
        var assessment = Planted.Under("species apple\ntrunk A at 0, 0 mm role lee\nuse \"lib/r.grove\"\n", files);
        var finding = assessment.Only("not-shared");
        Assert.Equal("lib/r.grove", finding.Place.File);
        Assert.Contains("1 more", finding.Message, StringComparison.Ordinal);
        Assert.Equal("A", Assert.Single(assessment.Planting.Trunks).Name);
        var role = Assert.Single(assessment.Planting.Roles);
        Assert.True(role.IsShared);
        Assert.Equal(new Length(304_800_000), role.Aims[0].Target);
        Assert.Equal("apple", Assert.Single(assessment.Planting.Profiles).Name);
        Assert.Single(assessment.Planting.Tolerances);

        var place = assessment.Origins.Locate(role.Aims[0].Origin);
        Assert.Equal("lib/r.grove", place.File);
        Assert.Equal("aim height 1 ft by 2030", assessment.TextOf(place.File).Slice(place.Span));
    }

    [Fact]
    public void The_planting_s_own_role_comes_before_a_used_one_without_a_word()
    {
        var files = new FilesInMemory(new() { ["r.grove"] = "role lee { rank 9 }\n" });
        var assessment = Planted.Under("trunk A at 0, 0 mm role lee\nrole lee { rank 2 }\nuse \"r.grove\"\n", files);
        Assert.Equal(2, Assert.Single(assessment.Planting.Roles).Rank?.Value);
        Assert.Empty(assessment.Found("twice-named"));
    }

    [Fact]
    public void What_a_used_file_gets_wrong_is_told_in_that_file()
    {
        var files = new FilesInMemory(new() { ["r.grove"] = "role lee { aim height 12 MM by 2030 }\nrolle x\n" });
        var assessment = Planted.Under("trunk A at 0, 0 mm role lee\nuse \"r.grove\"\n", files);
        Assert.Equal("r.grove", assessment.Only("odd-unit").Place.File);
        Assert.Contains(assessment.Findings, finding => finding.Check.Name is "misspelt-word" or "not-understood" && finding.Place.File == "r.grove");
    }
}
