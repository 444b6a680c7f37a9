using GroveSpec.Craft.Moving;
using Xunit;

namespace GroveSpec.Craft.Tests.Moving;

public sealed class StepsOutTests
{
    // Beyond the rings that are kept, too.
    [Theory]
    [InlineData(1)]
    [InlineData(24)]
    [InlineData(123)]
    public void All_steps_within_a_distance_come_once_ring_by_ring_the_nearest_first_and_of_equals_by_bearing(int farthest)
    {
        var across = Enumerable.Range(-farthest, (2 * farthest) + 1);
        var wanted = across.SelectMany(right => across.Select(back => (Right: right, Back: back)))
            .Where(step => Square(step) > 0 && Square(step) <= farthest * farthest)
            .OrderBy(Square)
            .ThenBy(step => Math.Atan2(step.Right, step.Back) is var bearing && bearing < 0 ? bearing + (2 * Math.PI) : bearing);

        Assert.Equal(wanted, StepsOut.Within(farthest));
        Assert.Equal(wanted, StepsOut.Within(farthest));

        static int Square((int Right, int Back) step) => (step.Right * step.Right) + (step.Back * step.Back);
    }
}
