using GroveSpec.Craft.Choice;
using Xunit;

namespace GroveSpec.Craft.Tests.Choice;

public sealed class BestSetsTests
{
    [Fact]
    public void Until_as_many_are_known_as_are_asked_for_every_set_is_told()
    {
        var best = new BestSets(2, AreNear);
        best.Add(10, 5);
        Assert.Equal(double.PositiveInfinity, best.Limit);
        best.Add(11, 1);
        Assert.Equal(double.PositiveInfinity, best.Limit);
        best.Add(20, 7);
        Assert.Equal(7, best.Limit);
        Assert.False(best.IsUnsettled());
        Assert.Equal([(11u, 1.0), (20u, 7.0)], best.Sure());
    }

    [Fact]
    public void A_set_just_at_the_limit_is_kept_and_one_over_it_is_not()
    {
        var best = new BestSets(1, AreNear);
        best.Add(30, 4);
        best.Add(20, 4 + (2 * BestSets.Hair));
        Assert.False(best.IsUnsettled());
        Assert.Equal([(30u, 4.0)], best.Sure());

        // Of two alike the one that holds the first thing is the better.
        best = new BestSets(1, AreNear);
        best.Add(30, 4);
        best.Add(21, 4 + (0.5 * BestSets.Hair));
        Assert.False(best.IsUnsettled());
        Assert.Equal(21u, Assert.Single(best.Sure()).Kept);
    }

    [Fact]
    public void Where_a_better_first_one_leaves_the_last_over_the_limit_the_sets_are_gone_through_again()
    {
        var best = new BestSets(2, AreNear);
        best.Add(10, 2);
        best.Add(12, 3);
        Assert.Equal(3, best.Limit);

        // Near both of them, so that the second best is one that was passed over with a limit of three.
        best.Add(11, 1);
        best.Add(20, 6);
        Assert.True(best.IsUnsettled());
        Assert.Equal([(11u, 1.0)], best.Sure());
        Assert.Equal(double.PositiveInfinity, best.Limit);
        best.Add(20, 6);
        Assert.False(best.IsUnsettled());
        Assert.Equal([(11u, 1.0), (20u, 6.0)], best.Sure());
    }

    [Fact]
    public void Where_there_are_fewer_sets_than_are_asked_for_all_of_them_are_told()
    {
        var best = new BestSets(3, AreNear);
        best.Add(11, 1);
        best.Add(10, 2);
        best.Add(20, 2);
        Assert.False(best.IsUnsettled());
        Assert.Equal([(11u, 1.0), (20u, 2.0)], best.Sure());
        var none = new BestSets(1, AreNear);
        Assert.False(none.IsUnsettled());
        Assert.Empty(none.Sure());
    }

    /// <summary>As numbers that differ by one.</summary>
    private static bool AreNear(uint one, uint other) => Math.Abs((long)one - other) <= 1;
}
