using CsCheck;
using GroveSpec.Craft.Ground;
using Xunit;

namespace GroveSpec.Craft.Tests.Ground;

/// <summary>Where one more foot makes gaps even that follow each other, held to the gaps themselves.</summary>
public sealed class ViewStripsTests
{
    [Fact]
    public void Between_two_feet_twenty_apart_the_middle_and_a_gap_as_long_as_the_next_are_even()
    {
        // Feet at 0, 20 and 28, limit a tenth: halfway from 9.47 to 10.53; as far from 20 as 28 is, from 11.11 to 12.8.
        double[] places = [.. new ViewStrips([28, 0, 20], 10).Between(5, 15).Select(share => 5 + (share * 10))];
        Assert.Equal(5, places.Length);
        Assert.InRange(places[0], 5, 9.473);
        Assert.InRange(places[1], 9.474, 10.526);
        Assert.InRange(places[2], 10.527, 11.111);
        Assert.InRange(places[3], 11.112, 12.799);
        Assert.InRange(places[4], 12.801, 15);
        Assert.Equal((20 * 0.9 / 1.9) + ((20 - (2 * 20 * 0.9 / 1.9)) / 2), places[1], 1e-9);
    }

    [Fact]
    public void Places_come_in_the_order_of_the_way()
    {
        var strips = new ViewStrips([28, 0, 20], 10);
        var (forward, back) = (strips.Between(5, 15), strips.Between(15, 5));
        Assert.Equal(forward.Order(), forward);
        Assert.Equal(forward, back.Select(share => 1 - share).Reverse(), (one, other) => Math.Abs(one - other) < 1e-9);
    }

    [Theory]
    [InlineData(0, 15)]
    [InlineData(15, 0)]
    public void A_strip_that_begins_where_the_way_begins_or_ends_lies_within_it(double from, double to)
    {
        // Feet at 0, 41 and 80, limit a fifth: from 0 on, where a foot stands, the gap to 41 is like the next, up to 41 - 39 · 0.8.
        double[] places = [.. new ViewStrips([0, 41, 80], 20).Between(from, to).Select(share => from + (share * (to - from)))];
        Assert.Contains(places, place => place is > 0 and < 41 - (39 * 0.8));
        Assert.Contains(places, place => place is > 41 - (39 * 0.8) and < 15);
    }

    [Fact]
    public void On_the_way_it_changes_as_often_as_is_told_whether_gaps_are_even() =>
        Gen.Select(Gen.Double[-100, 100].Array[0, 8], Gen.Double[0.5, 30], Gen.Double[-120, 120], Gen.Double[0.1, 20]).Sample((feet, percent, from, way) =>
        {
            var shares = new ViewStrips(feet, percent).Between(from, from + way);
            bool[] told = [IsEven(feet, percent, from), .. shares.Select(share => IsEven(feet, percent, from + (share * way))), IsEven(feet, percent, from + way)];

            // A strip within the way cannot be met by fine steps unless one of the places told lies in one.
            return told.Contains(true) || !Enumerable.Range(0, 2001).Any(step => IsEven(feet, percent, from + (way * step / 2000)));
        });

    /// <summary>Whether one more foot makes two gaps even that follow each other and of which it bounds one.</summary>
    private static bool IsEven(double[] feet, double percent, double own)
    {
        double[] row = [.. feet.Append(own).Order()];
        var place = Array.IndexOf(row, own);
        return Enumerable.Range(Math.Max(2, place), Math.Max(0, Math.Min(row.Length, place + 3) - Math.Max(2, place)))
            .Any(last => row[last - 1] - row[last - 2] is var left && row[last] - row[last - 1] is var right && left > 0 && right > 0 && Math.Abs(left - right) < percent / 100 * Math.Max(left, right));
    }
}
