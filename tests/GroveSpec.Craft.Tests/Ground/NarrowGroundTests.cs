using CsCheck;
using GroveSpec.Craft.Ground;
using Xunit;

namespace GroveSpec.Craft.Tests.Ground;

/// <summary>Ground, and what takes it, that is narrower than the lattice's step of 3 mm, against the areas of discs, strips and parallelograms.</summary>
public sealed class NarrowGroundTests
{
    private const double Radius = 40;
    private const double Far = 1000;
    private const double Square = 3 * 3;

    /// <summary>A line that follows the edge to a hundredth of a millimetre lies half of that within it on the average, along two chords and the rim some 2 mm² in all.</summary>
    private const double Tolerance = 3;

    [Fact]
    public void Free_ground_between_two_things_is_found_where_no_place_of_the_lattice_lies_in_it()
    {
        var outline = new TakenPlaces(Radius, (0, -Far, 10.3), (0, 10.9, Far)).Outline();
        Assert.Single(outline);
        Assert.Equal(StripArea(10.3, 10.9), GroundOutline.AreaInSquareMillimetres(outline), Tolerance);
    }

    [Fact]
    public void What_takes_ground_between_two_places_of_the_lattice_parts_it()
    {
        var outline = new TakenPlaces(Radius, (0, 10.3, 10.9)).Outline();
        Assert.Equal(2, outline.Length);
        Assert.Equal((Math.PI * Radius * Radius) - StripArea(10.3, 10.9), GroundOutline.AreaInSquareMillimetres(outline), Tolerance);
    }

    [Fact]
    public void Two_strips_of_free_ground_between_two_rows_of_places_are_two_lines()
    {
        var outline = new TakenPlaces(Radius, (0, -Far, 9.4), (0, 10.2, 10.8), (0, 11.6, Far)).Outline();
        Assert.Equal(2, outline.Length);
        Assert.Equal(StripArea(9.4, 10.2) + StripArea(10.8, 11.6), GroundOutline.AreaInSquareMillimetres(outline), Tolerance);
    }

    [Fact]
    public void A_strip_of_free_ground_has_its_area_whichever_way_it_runs() =>
        Gen.Select(Gen.Double[0, Math.PI], Gen.Double[-25, 25], Gen.Double[0.2, 6]).Sample(
            (angle, from, width) =>
            {
                var outline = new TakenPlaces(Radius, (angle, -Far, from), (angle, from + width, Far)).Outline();
                return outline.Length == 1 && Math.Abs(GroundOutline.AreaInSquareMillimetres(outline) - StripArea(from, from + width)) < Tolerance;
            },
            iter: 300);

    [Fact]
    public void Two_strips_that_cross_take_their_area_once_where_they_meet() =>
        Gen.Select(Gen.Double[0, Math.PI], Gen.Double[0.5, Math.PI - 0.5], Gen.Double[-8, 8], Gen.Double[-8, 8], Gen.Double[0.3, 5], Gen.Double[0.3, 5]).Sample(
            (angle, between, one, other, width, otherWidth) =>
            {
                var outline = new TakenPlaces(Radius, (angle, one, one + width), (angle + between, other, other + otherWidth)).Outline();
                var expected = (Math.PI * Radius * Radius) - StripArea(one, one + width) - StripArea(other, other + otherWidth) + (width * otherWidth / Math.Sin(between));

                // Where strips run into each other or into the rim, which happens at five places, parts of a square of 3 mm may be lost.
                return Math.Abs(GroundOutline.AreaInSquareMillimetres(outline) - expected) < Tolerance + (2 * Square);
            },
            iter: 300);

    /// <summary>Of a disc between two chords: the area under a circle, x√(r² − x²) + r² asin(x / r).</summary>
    private static double StripArea(double from, double to)
    {
        static double Under(double x) => (x * Math.Sqrt((Radius * Radius) - (x * x))) + (Radius * Radius * Math.Asin(x / Radius));
        return Under(to) - Under(from);
    }
}
