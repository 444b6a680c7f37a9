using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Ground;

/// <summary>The even gaps of a stand with a newcomer, as <see cref="EvenGaps"/> finds them.</summary>
public sealed class GroundGaps
{
    private readonly GroundStand stand;
    private readonly double percent;
    private readonly double restSquare;
    private readonly EvenGap[] mostAlike;
    private readonly ulong[] threes;

    /// <summary>Lays out the tables.</summary>
    /// <param name="stand">The trunks.</param>
    /// <param name="percent">The limit in percent of the longer gap.</param>
    public GroundGaps(GroundStand stand, double percent)
    {
        ArgumentNullException.ThrowIfNull(stand);
        (this.stand, this.percent) = (stand, percent);
        restSquare = (1 - (percent / 100)) * (1 - (percent / 100)) * (1 - 1e-9);
        (mostAlike, threes) = (new EvenGap[stand.Count], new ulong[stand.Count]);
    }

    /// <summary>Finds them; after <see cref="GroundStand.Connect"/>.</summary>
    /// <param name="found">Takes the three trunks of each, as a set; as long as there are trunks.</param>
    /// <returns>How many were found.</returns>
    public int Find(Span<ulong> found)
    {
        var changed = stand.TakeChanged();
        var count = 0;
        for (var trunk = 0; trunk < stand.Count; trunk++)
        {
            if ((changed >> trunk & 1) != 0)
            {
                threes[trunk] = MostAlike(trunk) is { } gap ? Keep(trunk, gap) : 0;
            }
        }

        for (var trunk = 0; trunk < stand.Count; trunk++)
        {
            if (threes[trunk] is not 0 and var three && !IsBeatenBy(mostAlike[trunk].Near, trunk, three) && !IsBeatenBy(mostAlike[trunk].Far, trunk, three))
            {
                found[count++] = three;
            }
        }

        return count;
    }

    private ulong Keep(int trunk, in EvenGap gap)
    {
        mostAlike[trunk] = gap;
        return (1UL << gap.Trunk) | (1UL << gap.Near) | (1UL << gap.Far);
    }

    /// <summary>As <see cref="EvenGaps"/> has it: whether another has found the same three more alike.</summary>
    private bool IsBeatenBy(int other, int trunk, ulong three) => threes[other] == three
        && (mostAlike[other].Difference < mostAlike[trunk].Difference || (mostAlike[other].Difference == mostAlike[trunk].Difference && other < trunk));

    private EvenGap? MostAlike(int trunk)
    {
        EvenGap? best = null;
        var near = stand.NeighboursOf(trunk);
        var isOpen = stand.OpenGapsOf(trunk);
        for (var first = 0; first < near.Length; first++)
        {
            if (!isOpen[first])
            {
                continue;
            }

            var square = stand.Square(trunk, near[first]);
            for (var second = first + 1; second < near.Length; second++)
            {
                if (isOpen[second] && AreNearlyAlike(square, stand.Square(trunk, near[second]))
                    && Compare(trunk, near[first], near[second]) is { } candidate && (best is not { } known || EvenGaps.IsMoreAlike(candidate, known)))
                {
                    best = candidate;
                }
            }
        }

        return best;
    }

    /// <summary>Leaves out what is surely further apart than the limit.</summary>
    private bool AreNearlyAlike(double one, double other) => one <= other ? one >= other * restSquare : other >= one * restSquare;

    private EvenGap? Compare(int trunk, int one, int other)
    {
        Int128 first = Rod.Square(stand.Sections[trunk].Centre, stand.Sections[one].Centre), second = Rod.Square(stand.Sections[trunk].Centre, stand.Sections[other].Centre);
        return first <= second ? EvenGaps.Compare(trunk, one, other, first, second, percent) : EvenGaps.Compare(trunk, other, one, second, first, percent);
    }
}
