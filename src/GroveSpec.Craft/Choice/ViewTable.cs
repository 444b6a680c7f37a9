using System.Numerics;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Choice;

/// <summary>
/// What an eye would see if only some of a stool stood: the same as <see cref="FrontView"/> shows of those, asked of very many
/// choices. What three trunks make is kept once worked out; one table serves one thread.
/// </summary>
public sealed class ViewTable
{
    private const byte Unknown = 0;
    private const byte No = 1;
    private const byte Yes = 2;

    private readonly FrontView view;
    private readonly double evenPercent;
    private readonly double levelPercent;
    private readonly int[] order;
    private readonly int[] tops;
    private readonly SeenTrunk?[] seen;
    private readonly uint[] covering;
    private readonly byte[] even;
    private readonly byte[] level;
    private readonly (int Trunk, ViewInterval Interval)[][] covers;
    private readonly uint[] thicker;
    private readonly uint[] asThick;
    private readonly uint[] nearer;
    private readonly uint[] asNear;
    private readonly uint measured;

    /// <summary>Looks at a stool.</summary>
    /// <param name="state">The planting, with its trunks in the order in which they are numbered; at most <see cref="NeighbourTable.MostTrunks"/> stand and have a place.</param>
    /// <param name="frame">The viewer's eye.</param>
    /// <param name="evenPercent">From which difference on two gaps are not even, in percent of the longer.</param>
    /// <param name="levelPercent">Up to which offset three tops are level, in percent of their line.</param>
    public ViewTable(PlantingState state, ViewFrame frame, double evenPercent, double levelPercent)
    {
        ArgumentNullException.ThrowIfNull(state);
        view = FrontView.Of(state, frame);
        (this.evenPercent, this.levelPercent) = (evenPercent, levelPercent);
        TrunkState[] standing = [.. state.Standing];
        var places = new Dictionary<TrunkState, int>(ReferenceEqualityComparer.Instance);
        for (var index = 0; index < standing.Length; index++)
        {
            places.Add(standing[index], index);
        }

        var count = standing.Length;
        order = [.. view.Trunks.Select(trunk => places[trunk.Trunk])];
        tops = [.. view.Trunks.Where(trunk => trunk.Top is not null).OrderBy(trunk => trunk.Top!.Value.Across).Select(trunk => places[trunk.Trunk])];
        (seen, covering, covers) = (new SeenTrunk?[count], new uint[count], new (int, ViewInterval)[count][]);
        (even, level) = (new byte[count * count * count], new byte[count * count * count]);
        (thicker, asThick, nearer, asNear) = (new uint[count], new uint[count], new uint[count], new uint[count]);
        foreach (var trunk in view.Trunks)
        {
            var index = places[trunk.Trunk];
            seen[index] = trunk;
            Seen |= 1u << index;
            measured |= trunk.Trunk.Diameter is null ? 0 : 1u << index;
        }

        foreach (var trunk in order)
        {
            Compare(trunk);
            var covering = this.covering[trunk];
            Coverable |= covering != 0 ? 1u << trunk : 0;
            covers[trunk] = [.. order.Where(other => (covering >> other & 1) != 0).OrderBy(other => seen[other]!.Cover.Left).Select(other => (other, seen[other]!.Cover))];
        }
    }

    /// <summary>The trunks that are seen, from left to right.</summary>
    public ReadOnlySpan<int> Order => order;

    /// <summary>The trunks whose tops are seen, from left to right by their tops.</summary>
    public ReadOnlySpan<int> TopOrder => tops;

    /// <summary>The trunks that are seen, as a set.</summary>
    public uint Seen { get; }

    /// <summary>The trunks whose base others would hide some of if all stood, as a set; none that is not among them is ever hidden.</summary>
    public uint Coverable { get; }

    /// <summary>Whether three trunks would make two even gaps in the view if they followed each other.</summary>
    /// <param name="left">The trunk on the left.</param>
    /// <param name="middle">The one between.</param>
    /// <param name="right">The one on the right.</param>
    /// <returns>True when they would.</returns>
    public bool IsEven(int left, int middle, int right)
    {
        ref var known = ref even[(((left * seen.Length) + middle) * seen.Length) + right];
        if (known == Unknown)
        {
            var (first, second) = (seen[middle]!.Foot.Across - seen[left]!.Foot.Across, seen[right]!.Foot.Across - seen[middle]!.Foot.Across);
            known = first > Length.Zero && second > Length.Zero && Likeness.IsCloserThan(first, second, evenPercent) ? Yes : No;
        }

        return known == Yes;
    }

    /// <summary>Whether the tops of three trunks would be level if they followed each other.</summary>
    /// <param name="left">The trunk whose top is on the left.</param>
    /// <param name="middle">The one between.</param>
    /// <param name="right">The one on the right.</param>
    /// <returns>True when they would.</returns>
    public bool IsLevel(int left, int middle, int right)
    {
        ref var known = ref level[(((left * seen.Length) + middle) * seen.Length) + right];
        if (known == Unknown)
        {
            known = TopLine.Over(seen[left]!.Top!.Value, seen[middle]!.Top!.Value, seen[right]!.Top!.Value).IsWithin(levelPercent) ? Yes : No;
        }

        return known == Yes;
    }

    /// <summary>How much of a trunk's base nearer ones would hide.</summary>
    /// <param name="trunk">A trunk that is seen.</param>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>In percent of its width; 0 where its diameter is not known. It never falls when more stand.</returns>
    public double HiddenPercent(int trunk, uint kept)
    {
        if ((covering[trunk] & kept) == 0)
        {
            return 0;
        }

        var own = seen[trunk]!.Cover;
        if (own.Width <= Length.Zero)
        {
            return Occlusion.HiddenShares([.. covers[trunk].Where(cover => (kept >> cover.Trunk & 1) != 0).Select(cover => cover.Interval), own])[^1].Percent;
        }

        // From left to right, so that each adds what lies beyond all before it.
        Length covered = Length.Zero, reached = own.Left;
        foreach (var (other, interval) in covers[trunk])
        {
            if ((kept >> other & 1) != 0)
            {
                var from = interval.Left > reached ? interval.Left : reached;
                var to = interval.Right < own.Right ? interval.Right : own.Right;
                (covered, reached) = to > from ? (covered + (to - from), to) : (covered, reached);
            }
        }

        return new Proportion(covered / own.Width).Percent;
    }

    /// <summary>How far thickness goes with nearness, by rank, among the trunks that stand and whose diameter is known: <see cref="RankCorrelation.Spearman"/>.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>The coefficient and of how many trunks.</returns>
    public (double Coefficient, int Trunks) ThickWithNear(uint kept)
    {
        var among = kept & measured;
        var number = BitOperations.PopCount(among);
        var mean = (number + 1) / 2.0;
        double together = 0, thickAlone = 0, nearAlone = 0;
        for (var rest = among; rest != 0; rest &= rest - 1)
        {
            var trunk = BitOperations.TrailingZeroCount(rest);
            var thick = Rank(thicker[trunk] & among, asThick[trunk] & among) - mean;
            var near = Rank(nearer[trunk] & among, asNear[trunk] & among) - mean;
            together += thick * near;
            thickAlone += thick * thick;
            nearAlone += near * near;
        }

        return (thickAlone > 0 && nearAlone > 0 ? together / Math.Sqrt(thickAlone * nearAlone) : 0, number);

        static double Rank(uint before, uint equal) => ((2 * BitOperations.PopCount(before)) + BitOperations.PopCount(equal) + 1) / 2.0;
    }

    private void Compare(int trunk)
    {
        var own = seen[trunk]!;
        foreach (var index in order)
        {
            var other = seen[index]!;
            if (own.Hidden is not null && other.Nearness < own.Nearness && other.Cover.Left <= own.Cover.Right && other.Cover.Right >= own.Cover.Left)
            {
                covering[trunk] |= 1u << index;
            }

            if (own.Trunk.Diameter is { } one && other.Trunk.Diameter is { } two)
            {
                thicker[trunk] |= two.Value > one.Value ? 1u << index : 0;
                asThick[trunk] |= two.Value == one.Value ? 1u << index : 0;
                nearer[trunk] |= other.Foot.Depth < own.Foot.Depth ? 1u << index : 0;
                asNear[trunk] |= other.Foot.Depth == own.Foot.Depth ? 1u << index : 0;
            }
        }
    }
}
