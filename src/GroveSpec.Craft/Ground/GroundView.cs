using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Ground;

/// <summary>What an eye sees of a stand with a newcomer, as <see cref="FrontView"/> and the checks of the view have it. One view serves one thread.</summary>
public sealed class GroundView
{
    private readonly double gapPercent;
    private readonly double topPercent;
    private readonly double hiddenPercent;
    private readonly TrunkState newcomer;
    private readonly Length radius;
    private readonly int slot;
    private readonly List<Seen> row = [];
    private readonly List<Seen> tops = [];
    private readonly double[] left;
    private readonly double[] right;
    private readonly double[] power;
    private readonly bool[] isWide;
    private readonly (double Left, double Right)[] nearer;
    private readonly ulong hiddenWithout;
    private int ownPlace = -1;
    private int ownTop = -1;

    /// <summary>Lays out what is seen of the others.</summary>
    /// <param name="trunks">The trunks in their order, the newcomer among them at any place.</param>
    /// <param name="newcomer">Which of them it is.</param>
    /// <param name="frame">The eye.</param>
    /// <param name="gapPercent">The limit for even gaps in the view.</param>
    /// <param name="topPercent">The limit for level tops.</param>
    /// <param name="hiddenPercent">From what share on a trunk is hidden.</param>
    public GroundView(IReadOnlyList<TrunkState> trunks, int newcomer, ViewFrame frame, double gapPercent, double topPercent, double hiddenPercent)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        ArgumentNullException.ThrowIfNull(frame);
        (Frame, slot, this.newcomer) = (frame, newcomer, trunks[newcomer]);
        (this.gapPercent, this.topPercent, this.hiddenPercent) = (gapPercent, topPercent, hiddenPercent);
        radius = (this.newcomer.Diameter?.Value ?? Length.Zero) * 0.5;
        (left, right, power, isWide, nearer) = (new double[trunks.Count], new double[trunks.Count], new double[trunks.Count], new bool[trunks.Count], new (double, double)[trunks.Count]);
        Array.Fill(left, double.NaN);
        for (var index = 0; index < trunks.Count; index++)
        {
            if (index != newcomer && trunks[index].Place is { } place && See(trunks[index], index, place) is { } seen)
            {
                row.Add(seen);
                Cover(seen, place);
            }
        }

        // OrderBy keeps the order of the trunks among equals, as the view does.
        row = [.. row.OrderBy(seen => (double)seen.Foot.Across.Nanometres)];
        tops = [.. row.Where(seen => seen.Top is not null).OrderBy(seen => seen.Top!.Value.Across)];
        foreach (var seen in row)
        {
            hiddenWithout |= IsCovered(seen.Index) ? 1UL << seen.Index : 0;
        }
    }

    /// <summary>The eye.</summary>
    public ViewFrame Frame { get; }

    /// <summary>Sets the newcomer down.</summary>
    /// <param name="place">The place.</param>
    public void Set(PlanPoint place)
    {
        Remove();
        if (See(newcomer, slot, place) is not { } own)
        {
            return;
        }

        Cover(own, place);
        ownPlace = 0;
        while (ownPlace < row.Count && ComesBefore(row[ownPlace], own))
        {
            ownPlace++;
        }

        row.Insert(ownPlace, own);
        if (own.Top is { } top)
        {
            ownTop = 0;
            while (ownTop < tops.Count && (tops[ownTop].Top!.Value.Across < top.Across || (tops[ownTop].Top!.Value.Across == top.Across && ComesBefore(tops[ownTop], own))))
            {
                ownTop++;
            }

            tops.Insert(ownTop, own);
        }
    }

    /// <summary>The trunks that are hidden now, the newcomer's share in hiding them included.</summary>
    /// <returns>They as a set.</returns>
    public ulong Hidden()
    {
        if (ownPlace < 0)
        {
            return hiddenWithout;
        }

        var hidden = hiddenWithout | (IsCovered(slot) ? 1UL << slot : 0);
        for (var index = 0; index < left.Length; index++)
        {
            if (left[index] < right[slot] && left[slot] < right[index] && IsNearer(slot, index))
            {
                hidden = IsCovered(index) ? hidden | (1UL << index) : hidden & ~(1UL << index);
            }
        }

        return hidden;
    }

    /// <summary>Gaps that follow each other and are even in the view.</summary>
    /// <param name="found">Takes the three trunks of each, as a set; as long as there are trunks.</param>
    /// <param name="ofNewcomerAlone">Whether only those are looked for in which the newcomer takes part.</param>
    /// <returns>How many were found.</returns>
    public int EvenGaps(Span<ulong> found, bool ofNewcomerAlone)
    {
        var (first, last) = ofNewcomerAlone ? Around(ownPlace, row.Count) : (2, row.Count);
        var count = 0;
        for (var index = first; index < last; index++)
        {
            Length left = row[index - 1].Foot.Across - row[index - 2].Foot.Across, right = row[index].Foot.Across - row[index - 1].Foot.Across;
            if (left > Length.Zero && right > Length.Zero && MayBeCloser(left, right) && Likeness.IsCloserThan(left, right, gapPercent))
            {
                found[count++] = Three(row, index);
            }
        }

        return count;
    }

    /// <summary>Tops that lie on one line in the view.</summary>
    /// <param name="found">Takes the three trunks of each, as a set; as long as there are trunks.</param>
    /// <param name="ofNewcomerAlone">Whether only those are looked for in which the newcomer takes part.</param>
    /// <returns>How many were found.</returns>
    public int LevelTops(Span<ulong> found, bool ofNewcomerAlone)
    {
        var (first, last) = ofNewcomerAlone ? Around(ownTop, tops.Count) : (2, tops.Count);
        var count = 0;
        for (var index = first; index < last; index++)
        {
            if (TopLine.Over(tops[index - 2].Top!.Value, tops[index - 1].Top!.Value, tops[index].Top!.Value).IsWithin(topPercent))
            {
                found[count++] = Three(tops, index);
            }
        }

        return count;
    }

    /// <summary>How far thickness goes with nearness.</summary>
    /// <returns>Spearman's coefficient of the trunks that are seen and whose diameter is known, and of how many.</returns>
    public (double Coefficient, int Trunks) ThickWithNear()
    {
        var measured = row.Where(seen => seen.Trunk.Diameter is not null).ToList();
        return (
            RankCorrelation.Spearman([.. measured.Select(seen => seen.Trunk.Diameter!.Value.Value.Millimetres)], [.. measured.Select(seen => -seen.Foot.Depth.Millimetres)]),
            measured.Count);
    }

    private static (int First, int Last) Around(int place, int count) => place < 0 ? (0, 0) : (Math.Max(2, place), Math.Min(count, place + 3));

    private static ulong Three(List<Seen> seen, int index) => (1UL << seen[index - 2].Index) | (1UL << seen[index - 1].Index) | (1UL << seen[index].Index);

    private static bool ComesBefore(Seen one, Seen other) =>
        one.Foot.Across != other.Foot.Across ? one.Foot.Across < other.Foot.Across : one.Index < other.Index;

    private bool IsNearer(int one, int other) => power[one] != power[other] ? power[one] < power[other] : one < other;

    private bool MayBeCloser(Length left, Length right)
    {
        double one = left.Nanometres, other = right.Nanometres;
        return Math.Abs(one - other) <= ((gapPercent / 100) + 1e-9) * Math.Max(one, other);
    }

    private void Remove()
    {
        if (ownPlace >= 0)
        {
            row.RemoveAt(ownPlace);
            if (ownTop >= 0)
            {
                tops.RemoveAt(ownTop);
            }
        }

        (ownPlace, ownTop, left[slot]) = (-1, -1, double.NaN);
    }

    private Seen? See(TrunkState trunk, int index, PlanPoint place)
    {
        var half = index == slot ? radius : (trunk.Diameter?.Value ?? Length.Zero) * 0.5;
        return Frame.See(new SpacePoint(place.X, place.Y, Length.Zero)) is { } foot && Frame.Cover(place, half) is { } cover
            ? new Seen(trunk, index, foot, cover, TrunkAxis.TipOf(trunk, place) is { } tip ? Frame.See(tip) : null)
            : null;
    }

    /// <summary>Notes what a trunk covers, in whole nanometres; of one that is not seen no number stands at the left, which is beside none.</summary>
    private void Cover(Seen seen, PlanPoint place)
    {
        (left[seen.Index], right[seen.Index]) = (seen.Cover.Left.Nanometres, seen.Cover.Right.Nanometres);
        (power[seen.Index], isWide[seen.Index]) = (Frame.Power(place, seen.Index == slot ? radius : (seen.Trunk.Diameter?.Value ?? Length.Zero) * 0.5), seen.Trunk.Diameter is not null);
    }

    /// <summary>Whether nearer trunks cover as much of a trunk as hides it: the part of its width that they cover together.</summary>
    private bool IsCovered(int trunk)
    {
        if (!isWide[trunk])
        {
            return false;
        }

        var (from, to) = (left[trunk], right[trunk]);
        var count = 0;
        for (var other = 0; other < left.Length; other++)
        {
            if (left[other] <= to && right[other] >= from && other != trunk && IsNearer(other, trunk))
            {
                // From the left on; there are few, and this is asked for each place.
                var at = count++;
                for (; at > 0 && nearer[at - 1].Left > left[other]; at--)
                {
                    nearer[at] = nearer[at - 1];
                }

                nearer[at] = (left[other], right[other]);
            }
        }

        var covers = nearer.AsSpan(0, count);
        if (to <= from)
        {
            var isCovered = false;
            foreach (var cover in covers)
            {
                isCovered |= cover.Left <= from && cover.Right > from;
            }

            return isCovered && 100 >= hiddenPercent;
        }

        if (covers.IsEmpty)
        {
            return 0 >= hiddenPercent;
        }

        double open = 0, upTo = from;
        foreach (var cover in covers)
        {
            if (cover.Left > upTo)
            {
                open += (cover.Left < to ? cover.Left : to) - upTo;
            }

            upTo = cover.Right > upTo ? cover.Right : upTo;
        }

        open += upTo < to ? to - upTo : 0;
        return new Proportion((to - from - open) / (to - from)).Percent >= hiddenPercent;
    }

    private readonly record struct Seen(TrunkState Trunk, int Index, ViewedPoint Foot, ViewInterval Cover, ViewedPoint? Top);
}
