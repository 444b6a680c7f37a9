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

    // A sixth of the width that the viewer sees, off the middle of the depth: 400 mm from the front, 260 mm from the side.
    [Theory]
    [InlineData(180, 66.7, 0)]
    [InlineData(0, 66.7, 0)]
    [InlineData(90, 0, 43.3)]
    public void The_first_trunk_of_a_container_stands_a_third_of_the_way_in_from_a_side(int from, double x, double y)
    {
        var answer = Empty($"viewed from {from} deg, at 1500 mm\n");
        Assert.All(answer.Spots.Take(2), spot => Assert.InRange(Away(spot, x, y), 0, 0.6));
        Assert.Equal(-answer.Spots[0].Place.X.Millimetres, answer.Spots[1].Place.X.Millimetres, 0.001);
        Assert.Equal(-answer.Spots[0].Place.Y.Millimetres, answer.Spots[1].Place.Y.Millimetres, 0.001);
        Assert.All(answer.Spots, spot => Assert.True(from == 90 ? Math.Abs(spot.Place.Y.Millimetres) > 20.8 : Math.Abs(spot.Place.X.Millimetres) > 32));
        Assert.Contains(answer.Notes, note => note.Contains("about a third of the way in", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_mutes_the_check_of_the_centre_line_may_have_its_first_trunk_there()
    {
        var answer = Empty("viewed from 180 deg, at 1500 mm\nmute centred-main because \"formal\"\n");
        Assert.InRange(Away(answer.Spots[0], 0, 0), 0, 1);
        Assert.DoesNotContain(answer.Notes, note => note.Contains("third of the way", StringComparison.Ordinal));
    }

    private static GroundAnswer Empty(string rest) => FreeGround.Find(
        Check.Of("planting \"Empty\"\nhabit group\nspecies larix-kaempferi\ncontainer oval 400 x 260 x 40 mm\n" + rest).ToContext(),
        new(Length.FromMillimetres(20), null, null),
        cancellation: TestContext.Current.CancellationToken);

    /// <summary>How far from a place, or from the one opposite, a spot lies.</summary>
    private static double Away(GroundSpot spot, double x, double y) =>
        Math.Min(spot.Place.DistanceTo(PlanPoint.FromMillimetres(x, y)).Millimetres, spot.Place.DistanceTo(PlanPoint.FromMillimetres(-x, -y)).Millimetres);
}
