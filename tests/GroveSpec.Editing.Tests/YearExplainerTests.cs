using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Editing.Explaining;
using GroveSpec.Syntax.Text;
using NodaTime;
using Xunit;

namespace GroveSpec.Editing.Tests;

/// <summary>What is told of the site and of stages. Day lengths and solstices: computed with astronomy-engine; zones: the bands of the USDA map.</summary>
public sealed class YearExplainerTests
{
    private const string Text = """
        planting "Test"
        species zelkova-serrata
        site latitude 51.5 N, zone 8b, last frost 20 April, first frost 28 October, means 10 10 10 10 10 10 10 10 10 10 10 10
        seen leaf-out 2027-04-10
        trunk A at 0, 0 mm diameter 30 mm height 260 mm
        trunk B at 90, 40 mm diameter 20 mm height 200 mm species pinus-sylvestris
        task W wire on A after harden-off 2027
        task P prune on B after leaf-fall 2027
        task M measure on A B in bud-break 2028

        """;

    [Fact]
    public void The_site_tells_its_days_its_seasons_its_cold_and_its_warmth()
    {
        var known = At("site");

        // 16.638 h and 7.830 h by astronomy; the model gives 16.640 and 7.826.
        Assert.Contains("The longest day, about 21 June, has 16 h 38 min from sunrise to sunset; the shortest, about 21 December, 7 h 50 min.", known.Lines);
        Assert.Contains("By the sun, in 2027: spring from 20 March, summer from 21 June, autumn from 23 September, winter from 22 December. What a file calls a season begins with the month.", known.Lines);
        Assert.Contains(known.Lines, line => line.StartsWith("Zone 8b: the coldest night of a year is on average between -9.4 and -6.7 °C.", StringComparison.Ordinal));

        // 365 days, and 192 of them with both frosts, at 5 degrees above the base.
        Assert.Contains("Warmth of a year, by the monthly means: 1825 degree days above 5 °C, 0 above 10 °C.", known.Lines);
        Assert.Contains("Between the frosts, 191 days: 960 degree days above 5 °C.", known.Lines);
    }

    [Fact]
    public void A_stage_tells_its_days_its_width_and_its_source()
    {
        // Leaf-out came ten days before the middle of its band, 20 April: harden-off, 1 to 29 June, is halved and comes ten days sooner.
        var known = At("harden-off");
        Assert.Equal("harden-off 2027", known.Title);
        Assert.Equal("between 29 May 2027 and 12 June 2027, a band of 14 days.", known.Lines[0]);
        Assert.Equal("By the profile of zelkova-serrata (common practice) it begins 42 to 70 days after the usual last frost, 20 April 2027. It is moved 10 days earlier, and the band is halved, because leaf-out was seen on 10 April 2027.", known.Lines[1]);
    }

    [Fact]
    public void What_was_seen_and_what_a_species_does_not_have_is_said()
    {
        Assert.Equal(["on 10 April 2027.", "It was seen on 10 April 2027.", "the days are then 13.5 hours long."], At("leaf-out").Lines);
        Assert.Equal(["Scots pine has no such stage."], At("leaf-fall").Lines);
    }

    [Fact]
    public void Of_work_on_two_species_each_is_told()
    {
        var known = At("bud-break");
        Assert.Equal(6, known.Lines.Length);
        Assert.StartsWith("Scots pine: between ", known.Lines[0], StringComparison.Ordinal);
        Assert.StartsWith("Japanese zelkova: between ", known.Lines[3], StringComparison.Ordinal);
    }

    [Fact]
    public void A_stage_in_a_note_or_without_a_year_is_only_a_word()
    {
        const string Source = "planting \"leaf-out 2027\"\nprofile x {\n  stage leaf-out 10 days before last frost to 12 days after last frost from memory\n}\n";
        var assessment = Assessment.Of("a.grove", SourceText.FromText(Source), new NoFiles(), cancellation: TestContext.Current.CancellationToken);
        for (var offset = 0; offset < Source.Length; offset++)
        {
            Assert.DoesNotContain("leaf-out 20", Explainer.At(assessment, offset)?.Title ?? "", StringComparison.Ordinal);
        }
    }

    private static Explanation At(string word)
    {
        var assessment = Assessment.Of("a.grove", SourceText.FromText(Text), new NoFiles(), new LocalDate(2027, 5, 1), cancellation: TestContext.Current.CancellationToken);
        return Explainer.At(assessment, Text.IndexOf(word + " ", StringComparison.Ordinal) + 1)!;
    }
}
