using System.Numerics;
using System.Runtime.Intrinsics;
using GroveSpec.Craft.Views;

namespace GroveSpec.Craft.Moving;

/// <content>Trunks that nearer ones hide. The definition is that of <see cref="Occlusion"/>.</content>
public sealed partial class LooseStand
{
    /// <summary>Whether nearer trunks cover so much of one; the share is of its width that their covers take up together.</summary>
    private bool IsHidden(int trunk)
    {
        if (!isMeasured[trunk] || double.IsNaN(across[trunk]))
        {
            return false;
        }

        var count = 0;
        for (var rest = Overlapping(trunk); rest != 0; rest &= rest - 1)
        {
            var other = BitOperations.TrailingZeroCount(rest);
            if (other != trunk && Covers(other, trunk))
            {
                starts[count] = Math.Max(left[other], left[trunk]);
                ends[count++] = Math.Min(right[other], right[trunk]);
            }
        }

        if (count == 0)
        {
            return false;
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
        var covering = 0UL;
        for (var other = 0; other < Count; other++)
        {
            covering |= other != trunk && Covers(other, trunk) ? 1UL << other : 0;
        }

        return covering;
    }

    /// <summary>The trunks that are seen over or behind a part of one, it included, as a set.</summary>
    private ulong Overlapping(int trunk)
    {
        Vector256<double> from = Vector256.Create(left[trunk]), to = Vector256.Create(right[trunk]);
        var overlapping = 0UL;
        for (var place = 0; place < left.Length; place += 4)
        {
            var isOver = Vector256.LessThan(Vector256.Create(left.AsSpan(place)), to) & Vector256.GreaterThan(Vector256.Create(right.AsSpan(place)), from);
            overlapping |= (ulong)isOver.ExtractMostSignificantBits() << place;
        }

        return overlapping;
    }

    private bool Covers(int other, int trunk)
    {
        return isMeasured[other] && !double.IsNaN(across[other]) && left[other] < right[trunk] && right[other] > left[trunk]
            && (power[other] != power[trunk] ? power[other] < power[trunk] : other < trunk);
    }
}
