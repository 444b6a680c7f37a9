using GroveSpec.Craft.Stand;
using GroveSpec.Craft.Survey;
using Xunit;

namespace GroveSpec.Craft.Tests.Survey;

public sealed class ResidualCofactorsTests
{
    [Fact]
    public void What_the_sum_of_squares_loses_without_one_reading_or_two_is_what_fits_without_them_lose()
    {
        var random = new SeededRandom(3);
        var asked = 0;
        for (var layout = 0; layout < 30; layout++)
        {
            var solved = Solved(random);
            var cofactors = new ResidualCofactors(solved);
            for (var one = 0; one < solved.Network.Readings.Length; one++)
            {
                Assert.Equal(Loss(solved, one, one), cofactors.Gain(one)!.Value, Tolerance(solved));
                for (var other = one + 1; other < solved.Network.Readings.Length; other++)
                {
                    Assert.Equal(Loss(solved, one, other), cofactors.Gain(one, other)!.Value, Tolerance(solved));
                    asked++;
                }
            }
        }

        Assert.Equal(30 * 66, asked);
    }

    [Fact]
    public void Pairs_come_in_the_order_of_what_they_take_away()
    {
        var solved = Solved(new SeededRandom(4));
        var cofactors = new ResidualCofactors(solved);
        var all = cofactors.RankedPairs(1_000);
        Assert.Equal(solved.Network.Readings.Length * (solved.Network.Readings.Length - 1) / 2, all.Length);
        Assert.Equal(all.OrderByDescending(pair => pair.Gain), all);
        Assert.Equal(all.Take(7), cofactors.RankedPairs(7));
    }

    [Fact]
    public void A_reading_that_no_other_checks_has_nothing_to_lose()
    {
        // A trunk read to two known ones.
        var network = new SurveyNetwork([true, true, false], [new(2, 0, 100, 0), new(2, 1, 110, 1)]);
        var cofactors = new ResidualCofactors(SolvedNetwork.From(network, [0, 0, 120, 0, 50, 80]));
        Assert.Null(cofactors.Gain(0));
        Assert.Null(cofactors.Gain(0, 1));
        Assert.Empty(cofactors.Ranked());
        Assert.Empty(cofactors.RankedPairs(5));
    }

    /// <summary>Six trunks, three of them known, all read with a hundredth of a millimetre of noise, so that slopes are the same wherever they are taken.</summary>
    private static SolvedNetwork Solved(SeededRandom random)
    {
        var layout = SurveyedLayout.Scattered(random, 6, 3);
        var readings = new List<NetworkReading>();
        for (var one = 0; one < 6; one++)
        {
            for (var other = Math.Max(3, one + 1); other < 6; other++)
            {
                readings.Add(new(one, other, SurveyedLayout.Distance(layout.Places[one], layout.Places[other]) + (0.01 * random.NextNormal()), readings.Count));
            }
        }

        return SolvedNetwork.From(new SurveyNetwork([true, true, true, false, false, false], [.. readings]), [.. layout.Places.SelectMany(place => new[] { place.X, place.Y })]);
    }

    private static double Loss(SolvedNetwork solved, int one, int other) =>
        solved.SumOfSquares - SolvedNetwork.From(solved.Network.Without(reading => reading.Source == one || reading.Source == other), solved.Places).SumOfSquares;

    private static double Tolerance(SolvedNetwork solved) => 0.01 * solved.SumOfSquares;
}
