using GroveSpec.Binding.Profiles;
using GroveSpec.Craft.Calendar;
using GroveSpec.Model;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Binding.Tests;

public sealed class BuiltInProfilesTests
{
    public static TheoryData<string> Species => [.. BuiltInProfiles.Names];

    [Fact]
    public void Every_value_has_a_source_written_behind_it()
    {
        var tree = GroveParser.Parse(SourceText.FromText(BuiltInProfiles.Text));
        Assert.Empty(tree.Problems);
        var entries = tree.Statements.OfType<Statement.Profile>().SelectMany(profile => profile.Entries).ToList();
        Assert.True(entries.Count > 200);
        Assert.All(entries, entry => Assert.False(string.IsNullOrWhiteSpace(entry.Source?.Value), entry.Keyword.Text));
        Assert.DoesNotContain("no source given", BuiltInProfiles.Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Species))]
    public void The_name_is_the_botanical_one_and_what_every_profile_should_say_is_there(string species)
    {
        var profile = Of(species).ProfileOf(species)!;
        Assert.Equal(species, profile.Botanical!.Value.Value.ToLowerInvariant().Replace(' ', '-'));
        Assert.NotEqual(profile.Botanical.Value.Value, profile.Common!.Value.Value);
        Assert.NotNull(profile.Leaves);
        Assert.NotNull(profile.Hardiness);
        Assert.Null(profile.BendLimit);
    }

    [Theory]
    [MemberData(nameof(Species))]
    public void What_keeps_its_leaves_gets_no_stage_for_losing_them_and_what_drops_them_gets_all_in_order(string species)
    {
        var planting = Of(species);
        var year = TreeYear.Of(planting, species);
        var loses = year.Habit is LeafHabit.Deciduous or LeafHabit.DeciduousConifer or LeafHabit.SemiEvergreen;
        Assert.Equal(loses, year.Coming(Stage.LeafColour, 2027) is not null);
        Assert.Equal(loses, year.Coming(Stage.LeafFall, 2027) is not null);
        Assert.Equal(year.Habit == LeafHabit.Tropical, year.Coming(Stage.BudBreak, 2027) is null);
        var onsets = Enum.GetValues<Stage>().Where(stage => stage != Stage.Midsummer).Select(stage => year.Onset(stage, 2027)).OfType<NodaTime.DateInterval>().ToList();
        Assert.Equal(onsets.OrderBy(onset => onset.Start), onsets);
        Assert.Equal(onsets.OrderBy(onset => onset.End), onsets);
    }

    [Theory]
    [MemberData(nameof(Species))]
    public void Stages_and_cautions_name_no_dose_and_no_source_but_practice_for_bands(string species)
    {
        var profile = Of(species).ProfileOf(species)!;
        Assert.All(profile.Stages, stage => Assert.Equal("common practice", stage.Source));
        Assert.All(profile.Cautions, caution =>
        {
            Assert.DoesNotMatch("[0-9] ?(ml|g|l|mg|%|percent|drops)\\b", caution.Value);
            Assert.EndsWith(".", caution.Value, StringComparison.Ordinal);
        });
    }

    [Theory]
    // Zones, leaves and pace as read in the named sources: Utah State University's tree lists (USU), OSU, Trees and Shrubs Online,
    // Missouri Botanical Garden; those without a source were read in descriptions whose name was not kept.
    [InlineData("ulmus-parvifolia", 4, 9, LeafHabit.SemiEvergreen, GrowthPace.Medium, "USU extension")]
    [InlineData("acer-buergerianum", 5, 9, LeafHabit.Deciduous, GrowthPace.Slow, "OSU")]
    [InlineData("acer-palmatum", 5, 8, LeafHabit.Deciduous, GrowthPace.Slow, "USU extension")]
    [InlineData("zelkova-serrata", 5, 8, LeafHabit.Deciduous, GrowthPace.Medium, "")]
    [InlineData("fagus-crenata", 5, 6, LeafHabit.Deciduous, GrowthPace.Slow, "Trees and Shrubs Online")]
    [InlineData("larix-kaempferi", 4, 7, LeafHabit.DeciduousConifer, GrowthPace.Medium, "")]
    [InlineData("ginkgo-biloba", 4, 9, LeafHabit.Deciduous, GrowthPace.Slow, "")]
    [InlineData("chamaecyparis-obtusa", 4, 8, LeafHabit.Conifer, GrowthPace.Slow, "")]
    [InlineData("picea-jezoensis", 3, 7, LeafHabit.Conifer, GrowthPace.Medium, "Missouri Botanical Garden")]
    [InlineData("ficus-microcarpa", 9, 11, LeafHabit.Tropical, GrowthPace.Fast, "")]
    public void A_profile_says_what_its_sources_say(string species, int coldest, int warmest, LeafHabit leaves, GrowthPace growth, string source)
    {
        var profile = Of(species).ProfileOf(species)!;
        Assert.Equal((coldest, warmest), (profile.Hardiness!.Value.Value.Coldest.Number, profile.Hardiness.Value.Value.Warmest.Number));
        Assert.Equal((leaves, growth), (profile.Leaves!.Value.Value, profile.Growth!.Value.Value));
        Assert.Contains(source, profile.Hardiness.Value.Source, StringComparison.Ordinal);
    }

    [Theory]
    // From memory in the reference too, and said to be so.
    [InlineData("juniperus-chinensis", 4, 9)]
    [InlineData("pinus-sylvestris", 3, 7)]
    [InlineData("pinus-thunbergii", 5, 8)]
    [InlineData("larix-laricina", 2, 5)]
    public void What_is_from_memory_says_so(string species, int coldest, int warmest)
    {
        var hardiness = Of(species).ProfileOf(species)!.Hardiness!.Value;
        Assert.Equal((coldest, warmest, "from memory"), (hardiness.Value.Coldest.Number, hardiness.Value.Warmest.Number, hardiness.Source));
    }

    [Theory]
    // Kozlowski: beeches and pines make one fixed flush a year.
    [InlineData("fagus-crenata", Flush.Single)]
    [InlineData("fagus-sylvatica", Flush.Single)]
    [InlineData("pinus-sylvestris", Flush.Single)]
    [InlineData("pinus-thunbergii", Flush.Single)]
    [InlineData("pinus-parviflora", Flush.Single)]
    public void Beeches_and_pines_flush_once(string species, Flush flush)
    {
        var stated = Of(species).ProfileOf(species)!.Flush!.Value;
        Assert.Equal(flush, stated.Value);
        Assert.Contains("Kozlowski", stated.Source, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ulmus-parvifolia", "local plant-health authority")]
    [InlineData("zelkova-serrata", "local plant-health authority")]
    [InlineData("taxus-baccata", "poisonous")]
    [InlineData("buxus-sempervirens", "poisonous")]
    [InlineData("ficus-microcarpa", "irritates")]
    public void What_can_hurt_a_person_or_spread_a_disease_is_cautioned(string species, string words) =>
        Assert.Contains(Of(species).ProfileOf(species)!.Cautions, caution => caution.Value.Contains(words, StringComparison.Ordinal));

    private static Planting Of(string species) => Planted.Under($"species {species}\nsite latitude 50 N, last frost 1 May, first frost 1 November\n").Planting;
}
