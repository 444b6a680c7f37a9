using System.Collections.Immutable;
using CsCheck;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Year;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Calendar;

/// <summary>Bands are common practice; the arithmetic beside each was done by hand.</summary>
public sealed class TreeYearTests
{
    private static readonly Origin Here = new("test");

    [Fact]
    public void A_stage_says_which_band_it_comes_from_and_how_wide_it_is()
    {
        // Last frost 2 May; a tree that drops its leaves, 21 days before to 7 after.
        var coming = Year([]).Coming(Stage.LeafOut, 2027)!;
        Assert.Equal(Days("2027-04-11", "2027-05-09"), coming.Days);
        Assert.Equal(28, coming.DaysOfWidth);
        Assert.Equal((StageBasis.LeafHabit, "common practice"), (coming.Basis, coming.Source));
        Assert.Equal("By common practice for a tree that drops its leaves, which is taken for want of a profile, it begins from 21 days before to 7 days after the usual last frost, 2 May 2027.", coming.Account);
        Assert.Equal((0, null, 0), (coming.DaysMoved, coming.MovedBy, coming.YearsOfNotes));
    }

    [Fact]
    public void The_band_of_a_profile_names_the_profile_and_its_source()
    {
        var coming = Year([], Profile(LeafHabit.Deciduous, (Stage.HardenOff, 35, 49, "a flora"))).Coming(Stage.HardenOff, 2027)!;
        Assert.Equal((StageBasis.Profile, "a flora"), (coming.Basis, coming.Source));
        Assert.Equal("By the profile of test-elm (a flora) it begins 35 to 49 days after the usual last frost, 2 May 2027.", coming.Account);
        var other = Year([], Profile(LeafHabit.Conifer)).Coming(Stage.LeafOut, 2027)!;
        Assert.Equal("By common practice for a conifer that keeps its needles, it begins 0 to 21 days after the usual last frost, 2 May 2027.", other.Account);
    }

    [Fact]
    public void Midsummer_is_counted_from_the_solstice_of_that_year()
    {
        // 20 June 2028 at 20:01 UTC: computed with astronomy-engine.
        Assert.Equal(Days("2028-06-17", "2028-06-23"), Year([]).Onset(Stage.Midsummer, 2028));
        Assert.Contains("the summer solstice, 20 June 2028", Year([]).Coming(Stage.Midsummer, 2028)!.Account, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_seen_is_that_day_and_says_so()
    {
        var coming = Year([Saw(Stage.LeafOut, "2027-04-15")]).Coming(Stage.LeafOut, 2027)!;
        Assert.Equal((Days("2027-04-15", "2027-04-15"), 0, StageBasis.Seen, "seen"), (coming.Days, coming.DaysOfWidth, coming.Basis, coming.Source));
        Assert.Equal("It was seen on 15 April 2027.", coming.Account);
    }

    [Fact]
    public void A_stage_that_came_early_moves_the_later_ones_of_its_kind_in_that_year_and_halves_their_bands()
    {
        // Leaf-out on 15 April, ten days before the middle of its band. Harden-off 28 to 49 days after 2 May, 30 May to 20 June:
        // 21 days wide, so 11, beginning 10 days sooner and 5 in: 25 May to 5 June.
        var year = Year([Saw(Stage.LeafOut, "2027-04-15")]);
        var coming = year.Coming(Stage.HardenOff, 2027)!;
        Assert.Equal(Days("2027-05-25", "2027-06-05"), coming.Days);
        Assert.Equal((-10, Stage.LeafOut), (coming.DaysMoved, coming.MovedBy));
        Assert.EndsWith("It is moved 10 days earlier, and the band is halved, because leaf-out was seen on 15 April 2027.", coming.Account, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spring_says_nothing_of_the_autumn_nor_of_midsummer()
    {
        var (noted, usual) = (Year([Saw(Stage.LeafOut, "2027-04-15")]), Year([]));
        foreach (var stage in new[] { Stage.Midsummer, Stage.LeafColour, Stage.LeafFall, Stage.Dormant })
        {
            Assert.Equal(usual.Coming(stage, 2027), noted.Coming(stage, 2027));
        }

        var autumn = Year([Saw(Stage.LeafColour, "2027-10-30")]);
        Assert.Equal(usual.Coming(Stage.HardenOff, 2027), autumn.Coming(Stage.HardenOff, 2027));
        Assert.NotEqual(usual.Onset(Stage.LeafFall, 2027), autumn.Onset(Stage.LeafFall, 2027));
    }

    [Fact]
    public void The_last_stage_seen_before_it_counts()
    {
        var year = Year([Saw(Stage.BudBreak, "2027-03-20"), Saw(Stage.LeafOut, "2027-04-28")]);
        Assert.Equal((3, Stage.LeafOut), (year.Coming(Stage.HardenOff, 2027)!.DaysMoved, year.Coming(Stage.HardenOff, 2027)!.MovedBy));
    }

    [Fact]
    public void Over_the_years_notes_move_the_site_by_half_after_one_year_and_by_two_thirds_after_two()
    {
        var one = Year([Saw(Stage.LeafOut, "2026-04-13")]).Coming(Stage.LeafOut, 2028)!;
        Assert.Equal((Days("2028-04-05", "2028-05-03"), -6, 1), (one.Days, one.DaysMoved, one.YearsOfNotes));
        Assert.EndsWith("It is moved 6 days earlier, because what was seen in 1 year came 12 days early on average; of so few years only a part is taken.", one.Account, StringComparison.Ordinal);
        var two = Year([Saw(Stage.LeafOut, "2026-04-13"), Saw(Stage.LeafOut, "2025-04-13")]).Coming(Stage.LeafOut, 2028)!;
        Assert.Equal((-8, 2), (two.DaysMoved, two.YearsOfNotes));
        Assert.Equal(28, two.DaysOfWidth);
    }

    [Fact]
    public void A_day_over_two_months_from_its_band_stands_for_itself_and_moves_nothing()
    {
        // The middle of its band is 25 April 2027; 60 days later is 24 June.
        Assert.Equal(60, Year([Saw(Stage.LeafOut, "2027-06-24")]).Coming(Stage.HardenOff, 2027)!.DaysMoved);
        var far = Year([Saw(Stage.LeafOut, "2027-06-25")]);
        Assert.Equal(Days("2027-06-25", "2027-06-25"), far.Onset(Stage.LeafOut, 2027));
        Assert.Equal(Year([]).Coming(Stage.HardenOff, 2027), far.Coming(Stage.HardenOff, 2027));
    }

    [Fact]
    public void A_stage_seen_after_the_turn_of_the_year_belongs_to_the_autumn_before_it()
    {
        // First frost 9 November: the rest begins between 23 November and 21 December.
        var year = Year([Saw(Stage.Dormant, "2027-01-03")]);
        Assert.Equal(Days("2027-01-03", "2027-01-03"), year.Onset(Stage.Dormant, 2026));
        Assert.Equal(StageBasis.LeafHabit, year.Coming(Stage.Dormant, 2027)!.Basis);
    }

    [Fact]
    public void On_another_species_of_the_planting_a_stage_that_was_seen_moves_the_band_and_is_no_day_of_its_own()
    {
        var planting = Planting([Saw(Stage.LeafOut, "2027-04-15")], null) with { Species = new("some-larch", Here) };
        var coming = TreeYear.Of(planting, "some-oak").Coming(Stage.LeafOut, 2027)!;
        Assert.Equal((StageBasis.LeafHabit, -10, Stage.LeafOut), (coming.Basis, coming.DaysMoved, coming.MovedBy));
        Assert.Equal(StageBasis.Seen, TreeYear.Of(planting, "some-larch").Coming(Stage.LeafOut, 2027)!.Basis);
    }

    [Theory]
    [InlineData(LeafHabit.Evergreen)]
    [InlineData(LeafHabit.Conifer)]
    [InlineData(LeafHabit.Tropical)]
    public void What_keeps_its_leaves_has_no_stage_for_losing_them(LeafHabit habit)
    {
        var year = Year([], Profile(habit));
        Assert.Null(year.Coming(Stage.LeafColour, 2027));
        Assert.Null(year.Coming(Stage.LeafFall, 2027));
        Assert.Equal(habit == LeafHabit.Tropical, year.Coming(Stage.Dormant, 2027) is null);
    }

    [Fact]
    public void Whatever_was_seen_in_spring_its_stages_never_come_before_those_that_were_seen_before_them() =>
        Gen.Select(Gen.Int[-60, 60], Gen.Int[0, 2], Gen.Enum<LeafHabit>()).Sample((shift, which, habit) =>
        {
            var seen = (Stage)which;
            var profile = Profile(habit);
            if (Year([], profile).Onset(seen, 2027) is not { } expected)
            {
                return;
            }

            var day = expected.Start.PlusDays(((expected.Length - 1) / 2) + shift);
            var year = TreeYear.Of(Planting([new SeenStage(seen, day, Here)], profile), profile.Name);
            for (var stage = Stage.BudBreak; stage <= Stage.HardenOff; stage++)
            {
                var onset = year.Coming(stage, 2027)!;
                Assert.Equal(stage == seen, onset.Basis == StageBasis.Seen);
                Assert.True(stage <= seen || onset.Days.Start > day);
                Assert.True(stage >= seen || onset.Days.End < day);
                Assert.True(onset.DaysOfWidth <= Year([], profile).Coming(stage, 2027)!.DaysOfWidth);
            }
        });

    private static TreeYear Year(ImmutableArray<SeenStage> seen, SpeciesProfile? profile = null) => TreeYear.Of(Planting(seen, profile), profile?.Name);

    private static Planting Planting(ImmutableArray<SeenStage> seen, SpeciesProfile? profile) => new()
    {
        Site = new Site { Origin = Here, Latitude = new(new Angle(54.3), Here), LastFrost = new(new AnnualDate(5, 2), Here), FirstFrost = new(new AnnualDate(11, 9), Here) },
        Seen = seen,
        Species = profile is null ? null : new(profile.Name, Here),
        Profiles = profile is null ? [] : [profile],
    };

    private static SpeciesProfile Profile(LeafHabit habit, params (Stage Stage, int Earliest, int Latest, string Source)[] stages) => new()
    {
        Name = "test-elm",
        Origin = Here,
        Leaves = new(habit, "a flora", Here),
        Stages = [.. stages.Select(stage => new StageBand(stage.Stage, FrostAnchor.LastFrost, stage.Earliest, stage.Latest, stage.Source, Here))],
    };

    private static SeenStage Saw(Stage stage, string day) => new(stage, Date(day), Here);

    private static DateInterval Days(string start, string end) => new(Date(start), Date(end));

    private static LocalDate Date(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;
}
