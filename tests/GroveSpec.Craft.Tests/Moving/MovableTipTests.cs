using CsCheck;
using GroveSpec.Craft.Moving;
using Xunit;

namespace GroveSpec.Craft.Tests.Moving;

public sealed class MovableTipTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_tip_goes_farther_than_is_told(bool keepsLength)
    {
        Gen.Select(Gen.Double[-150, 150], Gen.Double[-150, 150], Gen.Double[60, 500], Gen.Double[1, 60], Gen.Double[0, 360], Gen.Double[0, 1.2]).Sample((right, back, up, most, bearing, share) =>
        {
            var tip = new MovableTip(0, (right, back, up), keepsLength, null, most);
            var (sine, cosine) = Math.SinCos(bearing * Math.PI / 180);
            var way = (Right: tip.Farthest * share * sine, Back: tip.Farthest * share * cosine);
            return !tip.MayGo(way.Right, way.Back) || share <= 1;
        });
    }

    // A chord, 2 × 300 × sin 7.5°, with a degree more for what is rounded; and at one height of 300 mm, leaning 20° already, 300 × (tan 36° − tan 20°).
    [Theory]
    [InlineData(true, 0, 83.5)]
    [InlineData(false, 109.191, 108.77)]
    public void How_far_a_tip_goes_is_told_by_hand(bool keepsLength, double back, double farthest) =>
        Assert.Equal(farthest, new MovableTip(0, (0, back, 300), keepsLength, null, 15).Farthest, 0.05);
}
