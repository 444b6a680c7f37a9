using System.Diagnostics;
using System.Globalization;
using System.Text;
using CsCheck;
using GroveSpec.Binding.Profiles;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Times;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Tests.Shared;
using NodaTime;
using Xunit;

namespace GroveSpec.Binding.Tests;

public sealed class BinderTests
{
    private static readonly string[] Pieces =
    [
        "planting", "habit", "species", "container", "site", "viewed", "concept", "use", "trunk", "tape", "role", "task", "seen", "measured",
        "tolerance", "accept", "mute", "profile", "at", "diameter", "girth", "height", "lean", "toward", "line", "crown", "raised", "planned",
        "removed", "fixed", "form", "vigour", "aim", "by", "keep", "under", "rank", "story", "on", "all", "of", "in", "from", "to", "after",
        "before", "every", "until", "with", "coil", "span", "bend", "over", "low", "facing", "done", "between", "bark", "because", "source",
        "latitude", "zone", "last", "first", "frost", "means", "sun", "eye", "near", "stage", "hardiness", "bend-limit", "caution",
        "A", "B", "é", "lee", "W1", "wire", "unwire", "spring", "leaf-out", "clump", "slab", "oval", "round", "x", "deep", "stout", "push",
        "larix-kaempferi", "three-in-line", "copper", "0", "1", "-5", "12.5", "2027", "2027-02-30", "2027-04-22", "99999", "999999999999999999999999",
        "mm", "MM", "in", "miles", "deg", "%", "weeks", "days", "C", "N", "S", "8b", "May", "(", ")", "{", "}", ",", "\n", "\n", "\n", "\"text\"", "\"../x\"", "#", "\"",
    ];

    [Fact]
    public void Any_words_in_any_order_bind_without_a_fault() =>
        Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index]).Array[0, 60].Sample(
            words =>
            {
                var text = string.Join(' ', words);
                var assessment = Planted.Of(text);
                return assessment.Findings.All(finding => finding.Place.Span.Start >= 0
                    && finding.Place.Span.End <= assessment.TextOf(finding.Place.File).Length
                    && finding.Check.Name != "broken-check");
            },
            iter: 3000);

    [Fact]
    public void The_same_text_binds_to_the_same_planting() =>
        Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index]).Array[0, 60].Sample(
            words =>
            {
                var text = string.Join(' ', words);
                return PlantingEquality.FirstDifference(Planted.Of(text).Planting, Planted.Of(text).Planting) is null;
            },
            iter: 300);

    [Fact]
    public void A_difference_in_a_list_is_seen()
    {
        var left = Planted.Under("trunk A at 0, 0 mm height 10 mm").Planting;
        var right = Planted.Under("trunk A at 0, 0 mm height 11 mm").Planting;
        Assert.StartsWith("Trunks[0].Height", PlantingEquality.FirstDifference(left, right), StringComparison.Ordinal);
    }

    [Fact]
    public void One_bad_statement_costs_one_statement()
    {
        var planting = Planted.Under("trunk A at 0, 0 mm height 10 mm\ntrunk B at here\ntrunk C at 5, 5 mm diameter 1e5 mm height 9 mm\ntrunk D at 90, 0 mm\n").Planting;
        Assert.Equal(["A", "B", "C", "D"], planting.Trunks.Select(trunk => trunk.Name));
        Assert.Equal(Length.FromMillimetres(9), planting.Trunks[2].Height?.Value);
    }

    [Fact]
    public void Every_built_in_profile_binds_whole()
    {
        Assert.True(BuiltInProfiles.Names.Count() >= 20);
        Assert.Equal(BuiltInProfiles.Names.Count(), BuiltInProfiles.Names.Distinct().Count());
        foreach (var name in BuiltInProfiles.Names)
        {
            var assessment = Planted.Under($"species {name}\n");
            Assert.DoesNotContain(assessment.Findings, finding => !finding.Check.IsComposition);
            var profile = Assert.Single(assessment.Planting.Profiles);
            Assert.Equal(name, profile.Name);
            Assert.NotNull(profile.Botanical);
            Assert.NotNull(profile.Leaves);
            Assert.NotNull(profile.Hardiness);
        }

        // The whole text is a file of the language too.
        Assert.Empty(GroveParser.Parse(SourceText.FromText(BuiltInProfiles.Text)).Problems);
    }

    [Fact]
    public void A_frost_on_the_twenty_ninth_of_February_is_the_twenty_eighth_in_other_years()
    {
        var frost = Planted.Under("site last frost 29 Feb, first frost 9 Nov").Planting.Site!.LastFrost!.Value.Value;
        Assert.Equal(new LocalDate(2028, 2, 29), frost.InYear(2028));
        Assert.Equal(new LocalDate(2027, 2, 28), frost.InYear(2027));
    }

    [Fact]
    public void Moments_of_every_form_are_taken()
    {
        var tasks = Planted.Under("""
            task A feed on all on 2027-04-22
            task B feed on all in late autumn 2026
            task C feed on all after leaf-out 2027
            task D feed on all in 2027-05
            task E feed on all before A
            task F feed on all 6 to 8 weeks after A
            """).Planting.Tasks;
        Assert.Equal(new Moment.Day(new LocalDate(2027, 4, 22)), Assert.IsType<TimeClause.During>(tasks[0].Times[0]).Moment);
        Assert.Equal(new Moment.SeasonOfYear(SeasonPart.Late, Season.Autumn, 2026), Assert.IsType<TimeClause.During>(tasks[1].Times[0]).Moment);
        Assert.Equal(new Moment.StageOfYear(Stage.LeafOut, 2027), Assert.IsType<TimeClause.After>(tasks[2].Times[0]).Moment);
        Assert.Equal(new Moment.Month(new YearMonth(2027, 5)), Assert.IsType<TimeClause.During>(tasks[3].Times[0]).Moment);
        Assert.Equal(new Moment.OfTask("A"), Assert.IsType<TimeClause.Before>(tasks[4].Times[0]).Moment);
        Assert.True(tasks[5].Times[0] is TimeClause.Offset { Least: 6, Most: 8, Unit: TimeUnit.Weeks, IsAfter: true, Task: "A" });
    }

    [Fact]
    public void The_south_has_a_negative_latitude()
    {
        Assert.Equal(-41.3, Planted.Under("site latitude 41.3 S").Planting.Site?.Latitude?.Value.Degrees);
        Assert.Equal(-66.6, Planted.Under("site latitude -66.6").Planting.Site?.Latitude?.Value.Degrees);
    }

    [Theory]
    [InlineData(2000)]
    [InlineData(16_000)]
    public void Time_grows_with_the_number_of_trunks_and_not_with_its_square(int count)
    {
        // A bound so wide that only a quadratic search breaks it: 16,000 trunks with as many unknown roles and tapes.
        var text = new StringBuilder(Planted.Head);
        for (var index = 0; index < count; index++)
        {
            text.Append(CultureInfo.InvariantCulture, $"trunk T{index} at {index % 500}, {index / 500} mm role r{index}\n");
        }

        for (var index = 1; index < count; index++)
        {
            text.Append(CultureInfo.InvariantCulture, $"tape T{index - 1} to T{index} 5 mm\n");
        }

        var tree = GroveParser.Parse(SourceText.FromText(text.ToString()));
        var watch = Stopwatch.StartNew();
        var bound = Binder.Bind(tree, "test.grove", new Binding.Use.NoFiles());
        Assert.Equal(count, bound.Findings.Count(finding => finding.Check.Name == "unknown-name"));
        TestContext.Current.TestOutputHelper?.WriteLine($"{count}: {watch.Elapsed.TotalMilliseconds} ms");
    }

    [Fact]
    public void A_file_of_nothing_states_nothing()
    {
        foreach (var text in (string[])["", "\uFEFF", "# only a comment", "\r", "\n\n", "\0\0"])
        {
            Assert.Null(PlantingEquality.FirstDifference(new Planting(), Planted.Of(text).Planting));
        }
    }
}
