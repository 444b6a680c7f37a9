using CsCheck;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Views;

public sealed class OcclusionTests
{
    private static ViewInterval Interval(double left, double right) =>
        new(Length.FromMillimetres(left), Length.FromMillimetres(right));

    private static double[] Shares(params ViewInterval[] nearestFirst) =>
        [.. Occlusion.HiddenShares([.. nearestFirst]).Select(share => share.Share)];

    [Fact]
    public void In_a_parallel_view_the_overlap_of_the_widths_is_hidden()
    {
        // Reference value, computed independently: behind at x 50 with diameter 20, before it x 58 with diameter 30: 0.85 hidden.
        Assert.Equal([0, 0.85], Shares(Interval(58 - 15, 58 + 15), Interval(50 - 10, 50 + 10)));
    }

    [Fact]
    public void What_two_trunks_cover_together_counts_once()
    {
        Assert.Equal([0, 0.5, 0.75], Shares(Interval(0, 10), Interval(5, 15), Interval(0, 20)));
    }

    [Fact]
    public void Only_nearer_trunks_hide()
    {
        Assert.Equal([0, 1.0 / 3], Shares(Interval(0, 10), Interval(-10, 20)));
    }

    [Fact]
    public void A_trunk_that_touches_another_in_the_view_hides_nothing()
    {
        Assert.Equal([0, 0], Shares(Interval(0, 10), Interval(10, 20)));
    }

    [Fact]
    public void A_trunk_without_width_is_hidden_wholly_or_not_at_all()
    {
        Assert.Equal([0, 1, 0, 0], Shares(Interval(0, 10), Interval(4, 4), Interval(12, 12), Interval(10, 10)));
    }

    [Fact]
    public void Nothing_to_see_has_no_shares()
    {
        Assert.Empty(Shares());
    }

    [Fact]
    public void Shares_equal_a_count_of_covered_millimetres()
    {
        Gen.Select(Gen.Int[0, 60], Gen.Int[1, 20]).Array[0, 30].Sample(
            spans =>
            {
                var shares = Shares([.. spans.Select(span => Interval(span.Item1, span.Item1 + span.Item2))]);
                var taken = new bool[100];
                for (var index = 0; index < spans.Length; index++)
                {
                    var (left, width) = spans[index];
                    Assert.Equal(Enumerable.Range(left, width).Count(place => taken[place]) / (double)width, shares[index], 12);
                    Array.Fill(taken, true, left, width);
                }
            },
            iter: 2000);
    }

    [Fact]
    public void Chance_overlaps_agree_with_the_closed_form()
    {
        // Reference values, computed independently: frontage 400, half widths together 20: 0.0975, and 3.51 pairs among nine.
        var (half, frontage) = (Length.FromMillimetres(20), Length.FromMillimetres(400));

        Assert.Equal(0.0975, Occlusion.ChanceOfOverlap(half, frontage).Share, 12);
        Assert.Equal(3.51, Occlusion.ExpectedOverlaps(9, half, frontage), 12);
        Assert.Equal(1, Occlusion.ChanceOfOverlap(frontage * 3, frontage).Share);
    }
}
