using System.Numerics;
using System.Runtime.Intrinsics;
using GroveSpec.Craft.Views;

namespace GroveSpec.Craft.Moving;

/// <content>Trunks that nearer ones hide. The definition is that of <see cref="Occlusion"/>.</content>
public sealed partial class LooseStand
{
    /// <summary>Whether one is hidden where those that the trunk shifted last covers are known.</summary>
    private bool IsHiddenNow(int trunk, ulong covered) => trunk == lastShifted || (covered >> trunk & 1) != 0 || rest is null
        ? IsHidden(trunk)
        : rest.IsHidden(this, distance, trunk);

    /// <summary>Whether nearer trunks cover so much of one; the share is of its width that their covers take up together.</summary>
    /// <param name="trunk">The one, seen before as all others are.</param>
    /// <returns>True when it counts as hidden.</returns>
    internal bool IsHidden(int trunk)
    {
        var covering = Overlapping(trunk).Covering;
        if (covering == 0)
        {
            return false;
        }

        var count = 0;
        for (; covering != 0; covering &= covering - 1)
        {
            var other = BitOperations.TrailingZeroCount(covering);
            starts[count] = Math.Max(left[other], left[trunk]);
            ends[count++] = Math.Min(right[other], right[trunk]);
        }

        if (count > 1)
        {
            Array.Sort(starts, ends, 0, count);
        }

        var (covered, until) = (0.0, double.NegativeInfinity);
        for (var place = 0; place < count; place++)
        {
            covered += Math.Max(0, ends[place] - Math.Max(starts[place], until));
            until = Math.Max(until, ends[place]);
        }

        return 100 * covered >= limits[StandFaultKind.HiddenTrunk] * (right[trunk] - left[trunk]);
    }

    private ulong CoveringOf(int trunk)
    {
        See();
        return Overlapping(trunk).Covering;
    }

    /// <summary>The trunks that cover a part of one, and those of which it covers a part; of two equally near ones the first covers the other. Who has no known width covers none, nor is covered.</summary>
    private (ulong Covering, ulong Covered) Overlapping(int trunk)
    {
        Vector128<double> from = Vector128.Create(left[trunk]), to = Vector128.Create(right[trunk]), own = Vector128.Create(power[trunk]);
        ulong nearer = 0, farther = 0, same = 0;
        for (var place = 0; place < left.Length; place += 2)
        {
            var isOver = Vector128.LessThan(Vector128.Create(left.AsSpan(place)), to) & Vector128.GreaterThan(Vector128.Create(right.AsSpan(place)), from);
            if (isOver != Vector128<double>.Zero)
            {
                var other = Vector128.Create(power.AsSpan(place));
                nearer |= (ulong)(isOver & Vector128.LessThan(other, own)).ExtractMostSignificantBits() << place;
                farther |= (ulong)(isOver & Vector128.GreaterThan(other, own)).ExtractMostSignificantBits() << place;
                same |= (ulong)(isOver & Vector128.Equals(other, own)).ExtractMostSignificantBits() << place;
            }
        }

        var before = (1UL << trunk) - 1;
        return (nearer | (same & before), farther | (same & ~before & ~(1UL << trunk)));
    }
}
