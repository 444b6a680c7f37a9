using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice, by the leaf habit and flush of the profile.</summary>
public sealed class UnfitForSpeciesTests
{
    private const string Name = "unfit-for-species";

    [Theory]
    [InlineData("pinus-sylvestris", true)]
    [InlineData("larix-kaempferi", true)]
    [InlineData("buxus-sempervirens", true)]
    [InlineData("fagus-crenata", true)]
    [InlineData("acer-palmatum", false)]
    [InlineData("ulmus-parvifolia", false)]
    [InlineData("ficus-microcarpa", false)]
    public void Leaves_are_taken_only_of_what_makes_new_ones(string species, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, CareSource.Of(species, "task D defoliate on A on 2027-06-15")).Length);

    [Fact]
    public void It_says_why_and_what_to_do_instead() =>
        Assert.Equal("D (defoliate) takes the leaves of Scots pine, which is a conifer and lives on the needles it has. Thin or pinch instead, and leave the rest of its leaves on.", Check.Message(Name, CareSource.Of("pinus-sylvestris", "task D defoliate on A on 2027-06-15")));

    [Theory]
    [InlineData("pinus-sylvestris", "after leaf-fall 2027", true)]
    [InlineData("pinus-sylvestris", "in leaf-colour 2027", true)]
    [InlineData("pinus-sylvestris", "before bud-break 2027", false)]
    [InlineData("ficus-microcarpa", "from bud-break 2027 to 2027-06-01", true)]
    [InlineData("ficus-microcarpa", "in midsummer 2027", false)]
    [InlineData("acer-palmatum", "after leaf-fall 2027", false)]
    [InlineData("larix-kaempferi", "after leaf-fall 2027", false)]
    public void A_stage_that_the_species_does_not_have_is_told_where_it_is_named(string species, string time, bool isTold)
    {
        var source = CareSource.Of(species, $"task P measure on A {time}");
        var found = Check.Findings(Name, source);
        Assert.Equal(isTold ? 1 : 0, found.Length);
        Assert.All(found, finding => Assert.Equal(time, source[finding.Place.Span.Start..finding.Place.Span.End]));
    }

    [Fact]
    public void Of_a_species_without_a_profile_and_of_work_that_is_done_nothing_is_told()
    {
        CareSource.Miss(Name, CareSource.Of("some-shrub", "task D defoliate on A on 2027-06-15\ntask P prune on A after leaf-fall 2027"));
        CareSource.Miss(Name, CareSource.Of("pinus-sylvestris", "task D defoliate on A done 2026-06-15"));
    }

    [Fact]
    public void A_trunk_of_another_species_is_judged_by_its_own()
    {
        var source = CareSource.Of("acer-palmatum", "trunk C at 10, 90 mm diameter 9 mm height 120 mm species pinus-thunbergii\ntask D defoliate on A on 2027-06-15\ntask E defoliate on C on 2027-06-15");
        Assert.Equal(["C"], CareSource.Hit(Name, source).Trunks);
    }
}
