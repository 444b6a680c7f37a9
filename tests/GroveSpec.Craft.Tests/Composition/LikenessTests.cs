using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Composition;

public sealed class LikenessTests
{
    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    [Fact]
    public void Lengths_that_differ_by_just_the_limit_are_not_closer_than_it()
    {
        Assert.False(Likeness.IsCloserThan(Mm(92), Mm(100), 8));
        Assert.True(Likeness.IsCloserThan(Mm(92.000001), Mm(100), 8));
        Assert.False(Likeness.IsCloserThan(Mm(100), Mm(92), 8));
        Assert.False(Likeness.IsCloserThan(Mm(99.7), Mm(100), 0.3));
        Assert.True(Likeness.IsCloserThan(Mm(99.700001), Mm(100), 0.3));
    }

    [Fact]
    public void Distances_that_differ_by_just_the_limit_are_not_closer_than_it()
    {
        Int128 far = 100_000_000, near = 92_000_000;
        Assert.False(Likeness.AreRootsCloserThan(near * near, far * far, 8));
        Assert.True(Likeness.AreRootsCloserThan((near * near) + 1, far * far, 8));
        Assert.False(Likeness.AreRootsCloserThan((near * near) - 1, far * far, 8));
        Assert.False(Likeness.AreRootsCloserThan(far * far, near * near, 8));
    }

    [Fact]
    public void A_part_of_just_the_limit_is_within_it()
    {
        Assert.True(Likeness.IsAtMostPart(Mm(8), Mm(100), 8));
        Assert.False(Likeness.IsAtMostPart(Mm(8.000001), Mm(100), 8));
    }

    [Fact]
    public void The_difference_is_in_percent_of_the_longer()
    {
        Assert.Equal(8, Likeness.DifferenceInPercent(Mm(100), Mm(92)));
        Assert.Equal(0, Likeness.DifferenceInPercent(Length.Zero, Length.Zero));
    }
}
