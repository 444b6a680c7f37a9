using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>Finds trunks that are wide but short, or tall but thin, against the others.</summary>
/// <remarks>
/// Two trunks break the order when one is wider and yet shorter than the other, both by a limit at least. The trunk that
/// breaks it with most others is told, with all it breaks it with; then the next, until nothing is left: so one odd
/// trunk among nine is one finding and not eight. Of equals the one whose two ranks lie further apart is told, then the wide
/// one, then the one that comes first. The order is one for both kinds, drawn up with the lesser limit; where they differ, each kind
/// then leaves out what its own limit does not count, so that no two trunks are told twice. Up to sixty trunks all are compared, beyond that neighbours only.
/// </remarks>
public static class SizeOrder
{
    private const int AllAreComparedUpTo = 60;

    /// <summary>All trunks that are out of order.</summary>
    /// <param name="trunks">The trunks; those without a known diameter and height are left out.</param>
    /// <param name="widePercent">How far two sizes must differ to count for a trunk that is wide but short, in percent of the larger.</param>
    /// <param name="thinPercent">The same for a trunk that is tall but thin.</param>
    /// <param name="isMeantWide">Whether a trunk, by its place, is meant to be wide but short.</param>
    /// <param name="isMeantThin">Whether a trunk, by its place, is meant to be tall but thin.</param>
    /// <returns>The trunks, the one at odds with most others first.</returns>
    public static ImmutableArray<OutOfOrder> Find(StandingTrunks trunks, double widePercent, double thinPercent, Func<int, bool> isMeantWide, Func<int, bool> isMeantThin)
    {
        var breaks = Breaks(trunks, Math.Min(widePercent, thinPercent)).Where(pair => !isMeantWide(pair.Wide) && !isMeantThin(pair.Thin)).ToList();
        if (breaks.Count == 0)
        {
            return [];
        }

        var measured = Enumerable.Range(0, trunks.Count).Where(index => Sizes(trunks, index) is not null).ToArray();
        var byDiameter = Ranks(trunks.Count, measured, index => trunks.Trunks[index].Diameter!.Value.Value);
        var byHeight = Ranks(trunks.Count, measured, index => trunks.Trunks[index].Height!.Value.Value);
        var sides = new Dictionary<(int Trunk, bool IsWide), HashSet<int>>();
        foreach (var (wide, thin) in breaks)
        {
            Side(sides, (wide, true)).Add(thin);
            Side(sides, (thin, false)).Add(wide);
        }

        // Sides only ever lose partners, so a queue entry that promises too many is put back with what is left.
        var queue = new PriorityQueue<(int Trunk, bool IsWide), (int Count, int Apart, bool IsThin, int Trunk)>();
        foreach (var (side, partners) in sides)
        {
            queue.Enqueue(side, Urgency(side, partners.Count));
        }

        var found = ImmutableArray.CreateBuilder<OutOfOrder>();
        while (queue.TryDequeue(out var side, out var urgency))
        {
            var partners = sides[side];
            if (partners.Count != -urgency.Count)
            {
                if (partners.Count > 0)
                {
                    queue.Enqueue(side, Urgency(side, partners.Count));
                }

                continue;
            }

            var limit = side.IsWide ? widePercent : thinPercent;
            ImmutableArray<int> against = [.. partners.Where(partner => IsBroken(trunks, side.Trunk, partner, limit)).Order()];
            if (!against.IsEmpty)
            {
                found.Add(new OutOfOrder(side.Trunk, side.IsWide, against, against.Max(partner => Difference(trunks, side.Trunk, partner)), byDiameter[side.Trunk], byHeight[side.Trunk], measured.Length));
            }

            foreach (var partner in partners)
            {
                sides[(partner, !side.IsWide)].Remove(side.Trunk);
            }

            partners.Clear();
        }

        return found.ToImmutable();

        (int, int, bool, int) Urgency((int Trunk, bool IsWide) side, int count) =>
            (-count, -Math.Abs(byDiameter[side.Trunk] - byHeight[side.Trunk]), !side.IsWide, side.Trunk);
    }

    private static HashSet<int> Side(Dictionary<(int, bool), HashSet<int>> sides, (int, bool) key)
    {
        if (!sides.TryGetValue(key, out var partners))
        {
            sides.Add(key, partners = []);
        }

        return partners;
    }

    private static IEnumerable<(int Wide, int Thin)> Breaks(StandingTrunks trunks, double percent)
    {
        if (trunks.Count > AllAreComparedUpTo)
        {
            foreach (var (first, second) in trunks.NeighbourPairs)
            {
                if (Break(trunks, first, second, percent) is { } pair)
                {
                    yield return pair;
                }
            }

            yield break;
        }

        for (var first = 0; first < trunks.Count; first++)
        {
            for (var second = first + 1; second < trunks.Count; second++)
            {
                if (Break(trunks, first, second, percent) is { } pair)
                {
                    yield return pair;
                }
            }
        }
    }

    private static bool IsBroken(StandingTrunks trunks, int first, int second, double percent) => Break(trunks, first, second, percent) is not null;

    /// <summary>Two trunks that break the order by a limit, the wide one first; null where they do not.</summary>
    internal static (int Wide, int Thin)? Break(StandingTrunks trunks, int first, int second, double percent)
    {
        if (Sizes(trunks, first) is not { } one || Sizes(trunks, second) is not { } other
            || one.Diameter > other.Diameter == one.Height > other.Height
            || Likeness.IsCloserThan(one.Diameter, other.Diameter, percent)
            || Likeness.IsCloserThan(one.Height, other.Height, percent))
        {
            return null;
        }

        return one.Diameter > other.Diameter ? (first, second) : (second, first);
    }

    private static (Length Diameter, Length Height)? Sizes(StandingTrunks trunks, int index) =>
        trunks.Trunks[index] is { Diameter: { } diameter, Height: { } height } ? (diameter.Value, height.Value) : null;

    private static double Difference(StandingTrunks trunks, int one, int other)
    {
        var (left, right) = (Sizes(trunks, one)!.Value, Sizes(trunks, other)!.Value);
        return Math.Min(Likeness.DifferenceInPercent(left.Diameter, right.Diameter), Likeness.DifferenceInPercent(left.Height, right.Height));
    }

    private static int[] Ranks(int count, int[] measured, Func<int, Length> size)
    {
        var ranks = new int[count];
        var sorted = measured.OrderByDescending(size).ToArray();
        for (var place = 0; place < sorted.Length; place++)
        {
            ranks[sorted[place]] = place > 0 && size(sorted[place]) == size(sorted[place - 1]) ? ranks[sorted[place - 1]] : place + 1;
        }

        return ranks;
    }
}
