using GroveSpec.Craft.Care;
using GroveSpec.Craft.Wire;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Roles;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Wire;

public sealed class ThickeningTests
{
    private static readonly Origin Here = new("test");

    [Fact]
    public void Of_a_year_a_year_brings_one() =>
        Assert.Equal(1, Of(LeafHabit.Deciduous).ShareBetween(new LocalDate(2027, 4, 1), new LocalDate(2028, 4, 1)), 0.005);

    [Theory]
    [InlineData(LeafHabit.Deciduous, false, 2027, 6, 21)]
    [InlineData(LeafHabit.Conifer, false, 2027, 6, 21)]
    [InlineData(LeafHabit.Deciduous, true, 2027, 12, 22)]
    public void It_is_steepest_at_the_solstice(LeafHabit habit, bool isSouthern, int year, int month, int day)
    {
        // Rossi and others 2006: the growth of conifers in cold climates is fastest about the summer solstice, not when it is warmest.
        var thickening = Of(habit, isSouthern);
        var steepest = Enumerable.Range(0, 365).Select(number => new LocalDate(year, 1, 1).PlusDays(number))
            .MaxBy(date => thickening.ShareBetween(date, date.PlusDays(1)));
        Assert.InRange(Period.DaysBetween(new LocalDate(year, month, day), steepest), -2, 2);
    }

    [Theory]
    [InlineData(false, 2027)]
    [InlineData(true, 2028)]
    public void Nine_tenths_have_come_when_the_leaves_colour(bool isSouthern, int year)
    {
        // First frost 28 October or 28 April; the middle of the usual band of leaf-colour is 17 or 18 days before it.
        var colour = isSouthern ? new LocalDate(year, 4, 10) : new LocalDate(year, 10, 10);
        var winter = colour.PlusDays(-240);
        Assert.Equal(0.9, Of(LeafHabit.Deciduous, isSouthern).ShareBetween(winter, colour), 0.02);
    }

    [Fact]
    public void The_curve_is_that_of_the_published_example()
    {
        // A exp(−e^(β − κt)) with κ = 0.05: from its steepest day 16.681 days back for a tenth, and 45.007 on for nine tenths.
        // Where nine tenths come after 115 days all is 115 / 45.007 as long: 36.79 % lies before the steepest day, a tenth before 42.6 days.
        var thickening = Of(LeafHabit.Deciduous, hasFrosts: false);
        var steepest = new LocalDate(2027, 6, 21);
        var winter = new LocalDate(2027, 3, 15);
        Assert.Equal(0.3679, thickening.ShareBetween(winter, steepest), 0.01);
        Assert.Equal(0.1, thickening.ShareBetween(winter, steepest.PlusDays(-43)), 0.01);
        Assert.Equal(0.9, thickening.ShareBetween(winter, steepest.PlusDays(115)), 0.01);
    }

    [Fact]
    public void What_has_no_rest_thickens_evenly()
    {
        var thickening = Of(LeafHabit.Tropical);
        Assert.Equal(0.25, thickening.ShareBetween(new LocalDate(2027, 1, 1), new LocalDate(2027, 4, 2)), 0.001);
        Assert.Equal(0.25, thickening.ShareBetween(new LocalDate(2027, 6, 1), new LocalDate(2027, 8, 31)), 0.001);
    }

    [Fact]
    public void The_day_of_a_growth_is_the_first_by_which_it_has_come()
    {
        var thickening = Of(LeafHabit.Tropical);
        Assert.Equal(new LocalDate(2027, 1, 1).PlusDays(147), thickening.DayOf(new LocalDate(2027, 1, 1), Length.FromMillimetres(1), Length.FromMillimetres(2.5)));
        Assert.Null(thickening.DayOf(new LocalDate(2027, 1, 1), Length.FromMillimetres(10), Length.FromMillimetres(2)));
        Assert.Null(thickening.DayOf(new LocalDate(9995, 1, 1), Length.FromMillimetres(1), Length.FromMillimetres(2)));
    }

    [Theory]
    [InlineData(Vigour.Restrain, 0.5, 1.5)]
    [InlineData(Vigour.Steady, 1, 3)]
    [InlineData(Vigour.Push, 1.5, 4.5)]
    public void A_role_holds_growth_back_or_pushes_it(Vigour vigour, double least, double most)
    {
        var (little, much) = Of(LeafHabit.Deciduous, vigour: vigour).OfYear;
        Assert.Equal(least, little.Millimetres);
        Assert.Equal(most, much.Millimetres);
    }

    [Fact]
    public void Days_of_rest_are_not_growing_days()
    {
        // At rest by 9 December at the latest (42 days behind the frost), awake on 16 March at the soonest (35 before): 97 days of rest.
        var kind = KindOf(LeafHabit.Deciduous, isSouthern: false, hasFrosts: true);
        Assert.Equal(365 - 97, Thickening.GrowingDays(kind.Year, new LocalDate(2026, 9, 1), new LocalDate(2027, 9, 1)));
        Assert.Equal(30, Thickening.GrowingDays(kind.Year, new LocalDate(2027, 6, 1), new LocalDate(2027, 7, 1)));
        Assert.Equal(0, Thickening.GrowingDays(kind.Year, new LocalDate(2027, 1, 1), new LocalDate(2027, 2, 1)));
        Assert.Equal(-30, Thickening.GrowingDays(kind.Year, new LocalDate(2027, 7, 1), new LocalDate(2027, 6, 1)));
        Assert.Equal(365, Thickening.GrowingDays(KindOf(LeafHabit.Tropical, false, true).Year, new LocalDate(2026, 9, 1), new LocalDate(2027, 9, 1)));
    }

    private static Thickening Of(LeafHabit habit, bool isSouthern = false, Vigour? vigour = null, bool hasFrosts = true) => new(KindOf(habit, isSouthern, hasFrosts), vigour);

    private static TreeKind KindOf(LeafHabit habit, bool isSouthern, bool hasFrosts)
    {
        var site = new Site
        {
            Origin = Here,
            Latitude = new Stated<Angle>(new Angle(isSouthern ? -50 : 50), Here),
            LastFrost = hasFrosts ? new Stated<AnnualDate>(new AnnualDate(isSouthern ? 10 : 4, 20), Here) : null,
            FirstFrost = hasFrosts ? new Stated<AnnualDate>(new AnnualDate(isSouthern ? 4 : 10, 28), Here) : null,
        };
        var profile = new SpeciesProfile
        {
            Name = "tree",
            Origin = Here,
            Leaves = new Sourced<LeafHabit>(habit, "test", Here),
            Growth = new Sourced<GrowthPace>(GrowthPace.Medium, "test", Here),
        };
        return WorkList.KindOf(new Planting { Site = site, Profiles = [profile] }, "tree");
    }
}
