using GroveSpec.Checks.Ground;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Ground;

/// <summary>Where the best spots of free ground lie.</summary>
public sealed class GroundSpotTests
{
    private const string BackRight = """
        planting "Back right"
        habit group
        species picea-jezoensis
        container rectangle 700 x 420 x 50 mm
        viewed from 180 deg, at 1700 mm, eye 240 mm
        trunk A at 58, 91 mm diameter 44 mm height 665 mm
        trunk B at -38, 152 mm diameter 38 mm height 580 mm
        trunk C at 188, 128 mm diameter 33 mm height 565 mm
        trunk D at 124, 46 mm diameter 15 mm height 310 mm
        """;

    [Fact]
    public void What_is_told_of_a_trunk_that_stands_is_told_against_the_planting_without_it()
    {
        var context = Check.Of(BackRight).ToContext();
        var (own, other) = (new GroundWish(null, null, "D"), new GroundWish(Length.FromMillimetres(18), null, null));
        Assert.EndsWith("raises nothing that is not found without it.", Sentences.GroundSentences.Ground(FreeGround.Find(context, own, cancellation: TestContext.Current.CancellationToken), UnitSystem.Metric), StringComparison.Ordinal);
        Assert.EndsWith("raises nothing that is not found now.", Sentences.GroundSentences.Ground(FreeGround.Find(context, other, cancellation: TestContext.Current.CancellationToken), UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void A_spot_stands_no_farther_from_the_group_than_its_trunks_stand_from_each_other()
    {
        // The widest gap from any to its nearest is 114 mm, from B to A; balance alone would send the newcomer to the front left corner.
        var context = Check.Of(BackRight).ToContext();
        var answer = FreeGround.Find(context, new(Length.FromMillimetres(18), Length.FromMillimetres(200), null), cancellation: TestContext.Current.CancellationToken);
        var nearest = context.Standing.Trunks.Min(trunk => trunk.Place!.Value.DistanceTo(answer.Spots[0].Place).Millimetres);
        Assert.InRange(nearest, 20, 113.75);
    }
}
