using CsCheck;
using GroveSpec.Craft.Survey;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Trunks;
using Xunit;

namespace GroveSpec.Craft.Tests.Survey;

public sealed class TapePlacementTests
{
    private static Trunk Placed(string name, double x, double y, double diameter = 10) => Unplaced(name, diameter) with { At = new Stated<PlanPoint>(PlanPoint.FromMillimetres(x, y), Origin.Default) };

    private static Trunk Unplaced(string name, double? diameter = 10) => new()
    {
        Name = name,
        Origin = Origin.Default,
        Diameter = diameter is { } known ? new Stated<Length>(Length.FromMillimetres(known), Origin.Default) : null,
    };

    private static TapeReading Tape(string from, string to, double distance, bool isBetweenBark = false) => new(from, to, Length.FromMillimetres(distance), isBetweenBark, Origin.Default);

    private static PlanPoint? PlaceOf(string name, Trunk[] trunks, params TapeReading[] tapes) =>
        PlaceWithout([], name, trunks, tapes);

    private static PlanPoint? PlaceWithout(int[] distrusted, string name, Trunk[] trunks, params TapeReading[] tapes) =>
        TapePlacement.Complete(new Planting { Trunks = [.. trunks], Tapes = [.. tapes] }.StateOn(null), distrusted.ToHashSet()).Trunks.Single(trunk => trunk.Name == name).Place;

    [Fact]
    public void The_planned_trunk_of_the_language_page_is_placed_by_its_three_readings()
    {
        var place = PlaceOf("G", [Placed("B", 22, 18), Placed("C", 71, 52), Placed("D", -14, 66), Unplaced("G")], Tape("G", "B", 78.5), Tape("C", "G", 60), Tape("G", "D", 53.5));

        // Where the plate beside the language page draws it, to a millimetre: (30, 96).
        Assert.NotNull(place);
        Assert.InRange(place.Value.X.Millimetres, 28, 32);
        Assert.InRange(place.Value.Y.Millimetres, 94, 98);
    }

    [Fact]
    public void Exact_readings_give_the_exact_place()
    {
        Gen.Select(Gen.Int[-200, 200], Gen.Int[-200, 200]).Sample((x, y) =>
        {
            Trunk[] marks = [Placed("A", -110, -60), Placed("B", 130, -40), Placed("C", 20, 150)];
            double To(Trunk mark) => Math.Sqrt(Math.Pow(mark.At!.Value.Value.X.Millimetres - x, 2) + Math.Pow(mark.At.Value.Value.Y.Millimetres - y, 2));
            if (marks.Any(mark => To(mark) < 1))
            {
                return true;
            }

            var place = PlaceOf("N", [.. marks, Unplaced("N")], [.. marks.Select(mark => Tape("N", mark.Name, To(mark)))]);
            return place is { } found && found.DistanceTo(PlanPoint.FromMillimetres(x, y)) < Length.FromMillimetres(0.01);
        });
    }

    [Fact]
    public void A_reading_that_is_not_trusted_is_asked_only_where_the_others_do_not_place_the_trunk()
    {
        // Sought at (0, 0), 100 mm from each; M hangs on N.
        Trunk[] trunks = [Placed("A", 100, 0), Placed("B", -60, 80), Placed("C", 0, -100), Placed("D", 80, 60), Unplaced("N"), Unplaced("M")];
        TapeReading[] four = [Tape("N", "A", 100), Tape("N", "B", 100), Tape("D", "N", 140), Tape("N", "C", 100), Tape("M", "N", 50), Tape("M", "A", Math.Sqrt(12_500)), Tape("M", "C", 150)];
        Assert.InRange(PlaceOf("N", trunks, four)!.Value.DistanceTo(PlanPoint.Origin).Millimetres, 5, 40);
        Assert.InRange(PlaceWithout([2], "N", trunks, four)!.Value.DistanceTo(PlanPoint.Origin).Millimetres, 0, 0.001);
        Assert.InRange(PlaceWithout([2], "M", trunks, four)!.Value.DistanceTo(PlanPoint.FromMillimetres(0, 50)).Millimetres, 0, 0.001);

        // Two are left, which two places fit.
        Assert.Equal(PlaceOf("N", trunks, four), PlaceWithout([0, 2, 3], "N", trunks, four));
    }

    [Fact]
    public void A_reading_between_bark_is_made_one_between_centres_by_both_radii()
    {
        // Sought at (0, 0); marks 100 mm off, all 10 mm thick.
        var place = PlaceOf("N", [Placed("A", 100, 0), Placed("B", -60, 80), Placed("C", 0, -100), Unplaced("N")], Tape("N", "A", 90, true), Tape("N", "B", 100), Tape("N", "C", 90, true));
        Assert.True(place!.Value.DistanceTo(PlanPoint.Origin) < Length.FromMillimetres(0.001));
    }

    [Fact]
    public void A_reading_between_bark_of_a_trunk_of_unknown_thickness_is_not_used()
    {
        Assert.Null(PlaceOf("N", [Placed("A", 100, 0), Placed("B", -60, 80), Placed("C", 0, -100), Unplaced("N", null)], Tape("N", "A", 90, true), Tape("N", "B", 100), Tape("N", "C", 100)));
    }

    [Fact]
    public void Two_readings_leave_two_places_and_none_is_chosen()
    {
        Assert.Null(PlaceOf("N", [Placed("A", 100, 0), Placed("B", -60, 80), Unplaced("N")], Tape("N", "A", 100), Tape("N", "B", 100), Tape("N", "B", 100)));
    }

    [Fact]
    public void Marks_on_one_line_leave_a_mirror_image_and_none_is_chosen()
    {
        Assert.Null(PlaceOf("N", [Placed("A", -50, -50), Placed("B", 0, 0), Placed("C", 80, 80), Unplaced("N")], Tape("N", "A", 100), Tape("N", "B", 80), Tape("N", "C", 110)));
    }

    [Fact]
    public void A_trunk_placed_by_tape_serves_as_a_mark_for_the_next()
    {
        Trunk[] trunks = [Unplaced("M"), Unplaced("N"), Placed("A", 100, 0), Placed("B", -60, 80), Placed("C", 0, -100)];
        var place = PlaceOf("M", trunks, Tape("M", "N", 50), Tape("M", "A", Math.Sqrt(4900 + 1600)), Tape("M", "B", Math.Sqrt(8100 + 1600)), Tape("N", "A", 100), Tape("N", "B", 100), Tape("N", "C", 100));
        Assert.True(place!.Value.DistanceTo(PlanPoint.FromMillimetres(30, 40)) < Length.FromMillimetres(0.001));
    }

    [Fact]
    public void Readings_that_disagree_are_fitted_with_the_least_squares_whatever_their_order()
    {
        Trunk[] trunks = [Placed("A", 100, 0), Placed("B", -100, 0), Placed("C", 0, 100), Placed("D", 0, -100), Unplaced("N")];
        TapeReading[] tapes = [Tape("N", "A", 103), Tape("B", "N", 101), Tape("N", "C", 99), Tape("N", "D", 100)];
        var place = PlaceOf("N", trunks, tapes);

        // About the middle the four misfits are linear: x = (101 − 103)/2 and y = (100 − 99)/2, to second order.
        Assert.Equal(-1, place!.Value.X.Millimetres, 0.02);
        Assert.Equal(0.5, place.Value.Y.Millimetres, 0.02);
        Assert.Equal(place, PlaceOf("N", [.. trunks.Reverse()], [.. tapes.Reverse()]));
    }

    [Fact]
    public void Readings_that_break_the_triangle_still_give_a_place_and_unknown_names_are_left_out()
    {
        Assert.NotNull(PlaceOf("N", [Placed("A", 100, 0), Placed("B", -60, 80), Placed("C", 0, -100), Unplaced("N")], Tape("N", "A", 1), Tape("N", "B", 900), Tape("N", "C", 3)));
        Assert.Null(PlaceOf("N", [Placed("A", 100, 0), Placed("B", -60, 80), Unplaced("N")], Tape("N", "A", 100), Tape("N", "B", 90), Tape("N", "X", 3), Tape("N", "N", 3)));
    }

    [Theory]
    [InlineData(1_000)]
    [InlineData(1_001)]
    [InlineData(4_000)]
    public void Of_very_many_readings_all_count(int count)
    {
        // Three marks that are read over and over, each reading a little long or short by turns, so that only all together
        // are without misfit on the whole: the place is the one of the exact readings.
        Trunk[] marks = [Placed("A", -110, -60), Placed("B", 130, -40), Placed("C", 20, 150)];
        var sought = PlanPoint.FromMillimetres(33, 21);
        var tapes = Enumerable.Range(0, count).Select(index => Tape("N", marks[index % 3].Name, marks[index % 3].At!.Value.Value.DistanceTo(sought).Millimetres + (index / 3 % 2 == 0 ? 2 : -2))).ToArray();
        var place = PlaceOf("N", [.. marks, Unplaced("N")], tapes);
        Assert.True(place!.Value.DistanceTo(sought) < Length.FromMillimetres(4 * 3.0 / count + 0.02), $"{place.Value.DistanceTo(sought).Millimetres} mm off");
    }

    [Fact]
    public void Very_many_readings_of_which_every_other_is_of_two_marks_still_tell_the_side()
    {
        // Sorted by place, the readings to the third mark are so few that none may be among those asked from each start.
        Trunk[] marks = [Placed("A", -100, 0), Placed("B", 100, 0), Placed("C", 99, 80)];
        var sought = PlanPoint.FromMillimetres(10, 60);
        TapeReading Read(int mark) => Tape("N", marks[mark].Name, marks[mark].At!.Value.Value.DistanceTo(sought).Millimetres);
        var place = PlaceOf("N", [.. marks, Unplaced("N")], [.. Enumerable.Range(0, 3_000).Select(index => Read(index % 2)), Read(2)]);
        Assert.True(place!.Value.DistanceTo(sought) < Length.FromMillimetres(0.01));
    }

    [Fact]
    public void A_stated_place_stays()
    {
        Assert.Equal(PlanPoint.FromMillimetres(1, 2), PlaceOf("N", [Placed("A", 100, 0), Placed("B", -60, 80), Placed("C", 0, -100), Placed("N", 1, 2)], Tape("N", "A", 100), Tape("N", "B", 100), Tape("N", "C", 100)));
    }

    [Fact]
    public void Two_groups_without_a_reading_between_them_stay_unplaced()
    {
        Assert.Null(PlaceOf("N", [Placed("A", 100, 0), Unplaced("L"), Unplaced("M"), Unplaced("N"), Unplaced("O")], Tape("N", "L", 100), Tape("N", "M", 100), Tape("N", "O", 100), Tape("L", "M", 50)));
    }
}
