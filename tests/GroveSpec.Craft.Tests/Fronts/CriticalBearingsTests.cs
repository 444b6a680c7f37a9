using System.Collections.Immutable;
using GroveSpec.Craft.Fronts;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Trunks;
using Xunit;
using static GroveSpec.Craft.Tests.Views.ViewPlantings;

namespace GroveSpec.Craft.Tests.Fronts;

/// <summary>Bearings worked out by hand, from the places of the trunks and the eye 1500 mm from the origin.</summary>
public sealed class CriticalBearingsTests
{
    private static readonly FrontLimits Nothing = new(null, null, null, 0, null, false);

    private static ImmutableArray<BearingRange> Find(FrontLimits limits, params Trunk[] trunks)
    {
        var state = State(Viewed(), trunks);
        return CriticalBearings.Find(new TurnTable(state, ViewFrame.Of(state)), null, limits, TestContext.Current.CancellationToken);
    }

    private static void Expect(ImmutableArray<BearingRange> found, params double[] degrees)
    {
        Assert.Equal(degrees.Length, found.Length);
        foreach (var (range, expected) in found.Zip(degrees.Order()))
        {
            Assert.InRange(expected, range.From - 1e-9, range.To + 1e-9);
            Assert.InRange(range.Width, 0, 1e-3);
        }
    }

    [Fact]
    public void Two_feet_stand_at_one_place_where_the_eye_stands_on_the_line_through_them()
    {
        // The line y = 300 meets the circle of radius 1500 where sin of the height over the axis is 0.2.
        var off = Math.Asin(0.2) * 180 / Math.PI;
        Expect(Find(Nothing, Trunk("A", -100, 300), Trunk("B", 80, 300)), 90 - off, 270 + off);
    }

    [Fact]
    public void Through_the_origin_they_do_so_from_both_ends_of_their_line() =>
        Expect(Find(Nothing, Trunk("A", -100, -100), Trunk("B", 70, 70)), 45, 225);

    [Fact]
    public void Two_are_equally_far_off_where_the_viewer_looks_square_to_their_line() =>
        Expect(Find(Nothing with { IsDepthAsked = true }, Trunk("A", -100, 0), Trunk("B", 70, 0)), 0, 90, 180, 270, 360);

    [Fact]
    public void Covers_meet_where_the_eye_stands_on_a_line_that_touches_both()
    {
        // Two of 20 mm, 200 mm apart about the origin: the outer lines run 10 mm beside the axis; the inner ones through the
        // origin rise by asin(10/100).
        var found = Find(Nothing with { HiddenPercent = 100 }, Trunk("A", -100, 0, 20), Trunk("B", 100, 0, 20));
        var (outer, inner) = (Math.Asin(10 / 1500.0) * 180 / Math.PI, Math.Asin(10 / 100.0) * 180 / Math.PI);
        double[] expected = [0, 360, 90, 180, 270, 90 - outer, 90 + outer, 270 - outer, 270 + outer, 90 - inner, 90 + inner, 270 - inner, 270 + inner];
        Expect(found, expected);
    }

    [Fact]
    public void Of_three_in_a_row_gaps_come_to_their_limit_where_perspective_makes_them_so()
    {
        // At -120, 0 and 100 on the x axis with the eye at bearing B: u = 1500·(-x·cos B)/(1500 - x·sin B). The gaps are as
        // (120/(1500+120s)) : (100/(1500-100s)), whatever cos B is; at 4 % they are even while the ratio lies within 0.96 to 1/0.96.
        var found = Find(Nothing with { EvenPercent = 4 }, Trunk("A", -120, 0), Trunk("M", 0, 0), Trunk("B", 100, 0));
        var sines = new[] { 0.96, 1 / 0.96 }.Select(ratio => (180_000 - (150_000 * ratio)) / (12_000 * (1 + ratio))).Where(sine => Math.Abs(sine) <= 1).ToList();
        double[] crossings = [90, 270];
        Expect(found, [.. crossings, .. sines.SelectMany(sine => new[] { Math.Asin(sine) * 180 / Math.PI, 180 - (Math.Asin(sine) * 180 / Math.PI) }).Select(degrees => degrees < 0 ? degrees + 360 : degrees)]);
    }

    [Fact]
    public void Two_trunks_at_one_place_never_change_their_order() => Assert.Empty(Find(Nothing, Trunk("A", 40, 10), Trunk("B", 40, 10)));
}
