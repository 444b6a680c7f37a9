using System.Numerics;

namespace GroveSpec.Craft.Moving;

/// <content>Neighbours of one size. The definition is that of <see cref="Composition.Twins"/>.</content>
public sealed partial class LooseStand
{
    /// <summary>Groups of neighbours of one size; each is one fault about all of the group, mended pair by pair.</summary>
    private bool Twins(StandFaultKind kind, ulong[] alikeOf)
    {
        if (!limits.IsOn(kind))
        {
            return true;
        }

        var told = 0UL;
        for (var trunk = 0; trunk < Count; trunk++)
        {
            if ((told >> trunk & 1) == 0 && (near[trunk] & alikeOf[trunk]) is var first and not 0)
            {
                var group = 1UL << trunk;
                for (var grown = group | first; grown != group;)
                {
                    group = grown;
                    for (var rest = group; rest != 0; rest &= rest - 1)
                    {
                        grown |= near[BitOperations.TrailingZeroCount(rest)] & alikeOf[BitOperations.TrailingZeroCount(rest)];
                    }
                }

                told |= group;
                if (!Add(kind, group, trunk, BitOperations.TrailingZeroCount(first)))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>For each trunk those of its size, neighbours or not: sizes stay as they are wherever a trunk is shifted.</summary>
    private ulong[] Alike(StandFaultKind kind, double[] size)
    {
        var alike = new ulong[Count];
        for (var trunk = 0; trunk < Count; trunk++)
        {
            for (var other = 0; other < Count; other++)
            {
                var (less, more) = size[trunk] <= size[other] ? (size[trunk], size[other]) : (size[other], size[trunk]);
                var isKnown = kind == StandFaultKind.TwinHeights ? !double.IsNaN(less) && !double.IsNaN(more) : isMeasured[trunk] && isMeasured[other];
                alike[trunk] |= isKnown && 100 * (more - less) < limits[kind] * more * (1 - 1e-12) ? 1UL << other : 0;
            }
        }

        return alike;
    }
}
