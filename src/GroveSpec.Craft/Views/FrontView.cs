using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Views;

/// <summary>The standing trunks of a planting as a viewer sees them, in perspective.</summary>
public sealed class FrontView
{
    private Length? widestCover;

    private FrontView(ViewFrame frame, ImmutableArray<SeenTrunk> trunks, ImmutableArray<TrunkState> unseen)
    {
        Frame = frame;
        Trunks = trunks;
        Unseen = unseen;
    }

    /// <summary>The viewer's eye.</summary>
    public ViewFrame Frame { get; }

    /// <summary>The trunks from left to right by the middle of their base; equals in the order of the state.</summary>
    public ImmutableArray<SeenTrunk> Trunks { get; }

    /// <summary>Standing trunks that are not seen, since they stand at, beside or behind the eye; in the order of the state.</summary>
    public ImmutableArray<TrunkState> Unseen { get; }

    /// <summary>The gaps between trunks that follow each other, from left to right.</summary>
    public IEnumerable<ViewGap> Gaps
    {
        get
        {
            for (var index = 1; index < Trunks.Length; index++)
            {
                yield return new ViewGap(Trunks[index - 1], Trunks[index]);
            }
        }
    }

    /// <summary>What is seen from the planting's own viewpoint.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <returns>The view.</returns>
    public static FrontView Of(PlantingState state) => Of(state, ViewFrame.Of(state));

    /// <summary>What is seen from a viewpoint.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <param name="frame">The viewer's eye.</param>
    /// <returns>The view. Takes n·log n steps for n trunks.</returns>
    public static FrontView Of(PlantingState state, ViewFrame frame)
    {
        var unseen = ImmutableArray.CreateBuilder<TrunkState>();
        TrunkState[] standing = [.. state.Standing];
        var seen = new List<(TrunkState Trunk, ViewedPoint Foot, ViewInterval Cover)>(standing.Length);
        var powers = new List<double>(standing.Length);
        foreach (var trunk in standing)
        {
            var place = trunk.Place!.Value;
            var radius = (trunk.Diameter?.Value ?? Length.Zero) * 0.5;
            if (frame.See(new SpacePoint(place.X, place.Y, Length.Zero)) is { } foot && frame.Cover(place, radius) is { } cover)
            {
                seen.Add((trunk, foot, cover));
                powers.Add(frame.Power(place, radius));
            }
            else
            {
                unseen.Add(trunk);
            }
        }

        var nearestFirst = OrderBy([.. powers]);
        var covers = ImmutableArray.CreateBuilder<ViewInterval>(seen.Count);
        foreach (var index in nearestFirst)
        {
            covers.Add(seen[index].Cover);
        }

        var shares = Occlusion.HiddenShares(covers.MoveToImmutable());
        var nearness = new int[seen.Count];
        for (var place = 0; place < nearestFirst.Length; place++)
        {
            nearness[nearestFirst[place]] = place;
        }

        var trunks = ImmutableArray.CreateBuilder<SeenTrunk>(seen.Count);
        foreach (var index in OrderBy([.. seen.Select(trunk => (double)trunk.Foot.Across.Nanometres)]))
        {
            var (trunk, foot, cover) = seen[index];
            trunks.Add(new SeenTrunk
            {
                Trunk = trunk,
                Foot = foot,
                Cover = cover,
                Nearness = nearness[index],
                Hidden = trunk.Diameter is null ? null : shares[nearness[index]],
                Top = TrunkAxis.TipOf(trunk) is { } tip ? frame.See(tip) : null,
            });
        }

        return new FrontView(frame, trunks.MoveToImmutable(), unseen.DrainToImmutable());
    }

    /// <summary>Which nearer trunks cover a part of a trunk's base.</summary>
    /// <param name="trunk">A trunk of this view.</param>
    /// <returns>Those trunks, the one that alone covers most first; equals from left to right.</returns>
    public ImmutableArray<SeenTrunk> Covering(SeenTrunk trunk)
    {
        // A cover holds the trunk's foot, so what is covered from farther off than the widest is not covered.
        var (low, high) = (FirstFrom(trunk.Cover.Left - WidestCover), FirstFrom(trunk.Cover.Right + WidestCover + new Length(1)));
        var covering = new List<SeenTrunk>();
        for (var index = low; index < high; index++)
        {
            if (Trunks[index].Nearness < trunk.Nearness && Trunks[index].Cover.Common(trunk.Cover) > Length.Zero)
            {
                covering.Add(Trunks[index]);
            }
        }

        return [.. covering.OrderByDescending(other => other.Cover.Common(trunk.Cover))];
    }

    private Length WidestCover
    {
        get
        {
            if (widestCover is not { } widest)
            {
                widest = Length.Zero;
                foreach (var trunk in Trunks)
                {
                    widest = trunk.Cover.Width > widest ? trunk.Cover.Width : widest;
                }

                widestCover = widest;
            }

            return widest;
        }
    }

    /// <summary>The place of the first trunk whose foot is seen at or to the right of a place.</summary>
    private int FirstFrom(Length across)
    {
        var (low, high) = (0, Trunks.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = Trunks[middle].Foot.Across < across ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    /// <summary>The places of keys in rising order; of equal keys the first comes first.</summary>
    private static int[] OrderBy(double[] keys)
    {
        var order = new int[keys.Length];
        for (var index = 0; index < order.Length; index++)
        {
            order[index] = index;
        }

        Array.Sort(keys, order);
        for (int start = 0, end; start < keys.Length; start = end)
        {
            end = start + 1;
            while (end < keys.Length && keys[end] == keys[start])
            {
                end++;
            }

            Array.Sort(order, start, end - start);
        }

        return order;
    }
}
