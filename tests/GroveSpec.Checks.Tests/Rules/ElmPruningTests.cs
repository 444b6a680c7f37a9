using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Alberta allows elms to be pruned from 1 October to 31 March (its rules on elm pruning, as read).</summary>
public sealed class ElmPruningTests
{
    private const string Name = "elm-pruning";

    [Theory]
    [InlineData("2027-03-31", false)]
    [InlineData("2027-04-01", true)]
    [InlineData("2027-09-30", true)]
    [InlineData("2027-10-01", false)]
    public void It_is_told_from_April_to_September(string day, bool isTold) => Tell("ulmus-parvifolia", "prune", day, CareSource.North, isTold);

    [Theory]
    [InlineData("2027-03-31", true)]
    [InlineData("2027-04-01", false)]
    [InlineData("2027-09-30", false)]
    [InlineData("2027-10-01", true)]
    public void South_of_the_equator_it_is_turned_round(string day, bool isTold) => Tell("ulmus-parvifolia", "prune", day, CareSource.South, isTold);

    [Theory]
    [InlineData("zelkova-serrata", "prune", true)]
    [InlineData("ulmus-glabra", "prune", true)]
    [InlineData("acer-palmatum", "prune", false)]
    [InlineData("ulmus-parvifolia", "pinch", false)]
    public void It_is_told_of_elms_and_zelkovas_that_are_pruned(string species, string kind, bool isTold) => Tell(species, kind, "2027-06-15", CareSource.North, isTold);

    [Fact]
    public void It_is_a_hint_that_defers_to_the_plant_health_authority()
    {
        var finding = CareSource.Hit(Name, CareSource.Of("zelkova-serrata", "task P prune on A from 2027-03-01 to 2027-04-10"));
        Assert.Equal(Severity.Hint, finding.Severity);
        Assert.Equal("P (prune) on A may fall into April to September, when fresh cuts on Japanese zelkova draw beetles that carry elm disease, and some places forbid it. Prune in the other half of the year, or ask your local plant-health authority.", finding.Message);
        CareSource.Miss(Name, CareSource.Of("zelkova-serrata", "task P prune on A on 2027-06-01 done 2027-06-01"));
    }

    private static void Tell(string species, string kind, string day, string site, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, CareSource.Of(species, $"task P {kind} on A on {day}", site)).Length);
}
