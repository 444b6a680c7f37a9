using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>The bands of the USDA map: zone 9a from −6.7 °C, 8b the band below. Ficus microcarpa lives in zones 9 to 11, by a published description.</summary>
public sealed class NoShelterTests
{
    private const string Name = "no-shelter";

    [Theory]
    [InlineData("ficus-microcarpa", "8a", true)]
    [InlineData("ficus-microcarpa", "8b", true)]
    [InlineData("ficus-microcarpa", "8", true)]
    [InlineData("ficus-microcarpa", "9", false)]
    [InlineData("ficus-microcarpa", "9a", false)]
    [InlineData("carpinus-turczaninowii", "5", false)]
    [InlineData("carpinus-turczaninowii", "5a", true)]
    [InlineData("carpinus-turczaninowii", "5b", false)]
    [InlineData("some-shrub", "3a", false)]
    public void A_species_in_a_colder_zone_than_it_stands_is_told(string species, string zone, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, CareSource.Of(species, "", Zone(zone))).Length);

    [Theory]
    [InlineData("from 2027-10-28 to 2028-04-30", false)]
    [InlineData("from 2027-10-29 to 2028-04-30", true)]
    [InlineData("from mid autumn 2027 to mid spring 2028", false)]
    [InlineData("in mid winter 2028", true)]
    [InlineData("from midsummer 2027 to late summer 2027", false)]
    public void A_shelter_has_to_begin_by_the_first_frost(string time, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, CareSource.Of("ficus-microcarpa", $"task C shelter on all {time}", Zone("8a"))).Length);

    [Fact]
    public void A_trunk_that_no_shelter_covers_is_named()
    {
        var finding = CareSource.Hit(Name, CareSource.Of("ficus-microcarpa", "task C shelter on A from mid autumn 2027 to mid spring 2028", Zone("8a")));
        Assert.Equal(["B"], finding.Trunks);
        Assert.Equal("Zone 9 is the coldest that Chinese banyan (B) stands in the ground, and this site is zone 8a; no task shelters it: add one that begins before the first frost.", finding.Message);
    }

    [Fact]
    public void A_shelter_that_comes_too_late_is_told_with_its_day_and_the_frosts() =>
        Assert.Contains("the shelter begins on 1 January 2028, after the usual first frost, 28 October 2027: let it begin sooner.", Check.Message(Name, CareSource.Of("ficus-microcarpa", "task C shelter on all in mid winter 2028", Zone("8a"))), StringComparison.Ordinal);

    [Fact]
    public void Without_a_zone_nothing_is_told() => CareSource.Miss(Name, CareSource.Of("ficus-microcarpa", ""));

    private static string Zone(string zone) => CareSource.North.Replace("N, ", $"N, zone {zone}, ", StringComparison.Ordinal);
}
