using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Views;

/// <summary>The standing trunks of a planting as a viewer sees them, in perspective.</summary>
public sealed class FrontView
{
    private FrontView(ViewFrame frame, ImmutableArray<SeenTrunk> trunks, ImmutableArray<TrunkState> unseen)
    {
        Frame = frame;
        Trunks = trunks;
        Unseen = unseen;
    }

    /// <summary>The viewer's eye.</summary>
    public ViewFrame Frame { get; }

    /// <summary>The trunks from left to right by the middle of their base; equals in the order of the file.</summary>
    public ImmutableArray<SeenTrunk> Trunks { get; }

    /// <summary>Standing trunks that are not seen, since they stand at, beside or behind the eye; in the order of the file.</summary>
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
        var seen = new List<(TrunkState Trunk, ViewedPoint Foot, ViewInterval Cover, double Power)>();
        foreach (var trunk in state.Standing)
        {
            var place = trunk.Place!.Value;
            var radius = (trunk.Diameter?.Value ?? Length.Zero) * 0.5;
            if (frame.See(new SpacePoint(place.X, place.Y, Length.Zero)) is { } foot && frame.Cover(place, radius) is { } cover)
            {
                seen.Add((trunk, foot, cover, frame.Power(place, radius)));
            }
            else
            {
                unseen.Add(trunk);
            }
        }

        var nearestFirst = OrderBy(seen.Count, (left, right) => seen[left].Power.CompareTo(seen[right].Power));
        var covers = ImmutableArray.CreateBuilder<ViewInterval>(seen.Count);
        foreach (var index in nearestFirst)
        {
            covers.Add(seen[index].Cover);
        }

        var shares = Occlusion.HiddenShares(covers.DrainToImmutable());
        var records = new SeenTrunk[seen.Count];
        for (var nearness = 0; nearness < nearestFirst.Length; nearness++)
        {
            var (trunk, foot, cover, _) = seen[nearestFirst[nearness]];
            records[nearestFirst[nearness]] = new SeenTrunk
            {
                Trunk = trunk,
                Foot = foot,
                Cover = cover,
                Nearness = nearness,
                Hidden = trunk.Diameter is null ? null : shares[nearness],
                Top = TrunkAxis.Of(trunk) is { } axis ? frame.See(axis.Tip) : null,
            };
        }

        var leftToRight = OrderBy(seen.Count, (left, right) => seen[left].Foot.Across.CompareTo(seen[right].Foot.Across));
        return new FrontView(frame, [.. leftToRight.Select(index => records[index])], unseen.DrainToImmutable());
    }

    /// <summary>Which nearer trunks cover a part of a trunk's base.</summary>
    /// <param name="trunk">A trunk of this view.</param>
    /// <returns>Those trunks, the one that alone covers most first; equals from left to right.</returns>
    public ImmutableArray<SeenTrunk> Covering(SeenTrunk trunk) =>
    [
        .. Trunks
            .Where(other => other.Nearness < trunk.Nearness && other.Cover.Common(trunk.Cover) > Length.Zero)
            .OrderByDescending(other => other.Cover.Common(trunk.Cover)),
    ];

    private static int[] OrderBy(int count, Comparison<int> comparison)
    {
        var order = new int[count];
        for (var index = 0; index < count; index++)
        {
            order[index] = index;
        }

        // Equals stay in the order of the file, which Array.Sort alone does not promise.
        Array.Sort(order, (left, right) => comparison(left, right) is var way && way != 0 ? way : left.CompareTo(right));
        return order;
    }
}
