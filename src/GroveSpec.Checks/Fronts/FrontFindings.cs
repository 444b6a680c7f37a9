using System.Collections.Immutable;
using GroveSpec.Checks.Choosing;
using GroveSpec.Checks.Judging;
using GroveSpec.Checks.Rules;
using GroveSpec.Craft.Care;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Fronts;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Views;

namespace GroveSpec.Checks.Fronts;

/// <summary>What the checks that depend on the view find from any bearing, weighed. What is worked out of the last bearing is kept, so one serves one thread.</summary>
internal sealed class FrontFindings
{
    private const byte Unknown = 0;
    private const byte Told = 1;
    private const byte Untold = 2;

    private readonly CheckContext context;
    private readonly ChoiceCheck even;
    private readonly ChoiceCheck hidden;
    private readonly ChoiceCheck level;
    private readonly ChoiceCheck centred;
    private readonly ChoiceCheck reversed;
    private readonly ChoiceCheck sacrifice;
    private readonly OneFactOnce plan;
    private readonly CheckDescription evenInView = Catalogue.Find("even-gaps-in-view")!;
    private readonly byte[] told;
    private readonly TrunkState? largest;
    private readonly int largestPlace;
    private readonly DepthOrder? depth;
    private readonly ImmutableArray<(Bearing Side, double Weight)> sacrifices;
    private readonly DepthRanks ranks;

    /// <summary>Lays a planting out.</summary>
    /// <param name="context">The planting, of which at most 64 trunks stand and have a place.</param>
    public FrontFindings(CheckContext context)
    {
        this.context = context;
        var limits = new Limits(context);
        (even, hidden, level) = (new(context, limits, "even-gaps-in-view"), new(context, limits, "hidden-trunk"), new(context, limits, "level-tops"));
        (centred, reversed, sacrifice) = (new(context, limits, "centred-main"), new(context, limits, "depth-reversed"), new(context, limits, "sacrifice-in-front"));
        plan = PlanFacts(context, limits);
        Table = new TurnTable(NameOrder.Of(context.State), ViewFrame.Of(context.State));
        told = new byte[Table.Trunks.Length * Table.Trunks.Length * Table.Trunks.Length];
        largest = context.Standing.Count < 2 ? null : CentredMain.LargestFirst(context.Standing.Trunks).FirstOrDefault();
        largestPlace = largest is null ? -1 : Table.Trunks.IndexOf(largest);
        depth = context.Planting.Viewed?.Depth;
        ranks = new DepthRanks(Table);
        sacrifices = Sacrificed();
    }

    /// <summary>The checks that depend on where the viewer stands.</summary>
    public static ImmutableHashSet<string> Names { get; } =
        ["even-gaps-in-view", "hidden-trunk", "level-tops", "centred-main", "depth-reversed", "sacrifice-in-front"];

    /// <summary>What is seen from the bearing last asked of.</summary>
    public TurnTable Table { get; }

    /// <summary>The container's rim; null without one.</summary>
    public ContainerOutline? Outline => context.Outline;

    /// <summary>All bearings at which the weight can change.</summary>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>Ranges about them.</returns>
    public ImmutableArray<BearingRange> Critical(CancellationToken cancellation)
    {
        var found = CriticalBearings.Find(
            Table,
            Outline,
            new FrontLimits(
                even.IsOn ? even.Limit : null,
                level.IsOn ? level.Limit : null,
                hidden.IsOn ? hidden.Limit : null,
                centred.Limit,
                centred.IsOn && largest is not null ? largestPlace : null,
                reversed.IsOn && depth is not null),
            cancellation).ToList();
        foreach (var (side, _) in sacrifices)
        {
            found.AddRange(About(side.Degrees - sacrifice.Limit));
            found.AddRange(About(side.Degrees + sacrifice.Limit));
        }

        return [.. found.OrderBy(range => range.From)];
    }

    /// <summary>What is found from a bearing.</summary>
    /// <param name="from">The bearing; the table is turned to it.</param>
    /// <returns>The sum of the weights of all that is found, told or counted, and not accepted.</returns>
    public double At(Bearing from)
    {
        Table.Turn(from);
        var (sum, covered) = OfHidden();
        sum += OfGaps(covered) + OfTops();
        if (centred.IsOn && Outline is { } outline && largest is not null && CentredMain.IsCentred(from, outline, largest, centred.Limit))
        {
            sum += centred.Of(1UL << largestPlace);
        }

        if (reversed.IsOn && depth is { } order && DepthReversed.IsReversed(order, ranks.Correlation(), ranks.Count, reversed.Limit))
        {
            sum += reversed.Of(0);
        }

        foreach (var (side, weight) in sacrifices)
        {
            sum += Sacrifices.FromViewer(side, from).Degrees < sacrifice.Limit ? weight : 0;
        }

        return sum;
    }

    private (double Sum, ulong Covered) OfHidden()
    {
        var (sum, covered) = (0.0, 0UL);
        if (hidden.IsOn)
        {
            foreach (var trunk in Table.Order)
            {
                if (Table.Hidden(trunk) is { } share && share.Percent >= hidden.Limit)
                {
                    covered |= 1UL << trunk;
                    sum += hidden.Of(1UL << trunk);
                }
            }
        }

        return (sum, covered);
    }

    private double OfGaps(ulong covered)
    {
        var sum = 0.0;
        var order = Table.Order;
        for (var index = 2; index < order.Length && even.IsOn; index++)
        {
            var (left, middle, right) = (order[index - 2], order[index - 1], order[index]);
            var three = (1UL << left) | (1UL << middle) | (1UL << right);
            var (first, second) = (Table.Foot(middle).Across - Table.Foot(left).Across, Table.Foot(right).Across - Table.Foot(middle).Across);
            if ((three & covered) == 0 && first > Length.Zero && second > Length.Zero && Likeness.IsCloserThan(first, second, even.Limit) && !IsTold(left, middle, right))
            {
                sum += even.Of(three);
            }
        }

        return sum;
    }

    private double OfTops()
    {
        var sum = 0.0;
        var order = Table.TopOrder;
        for (var index = 2; index < order.Length && level.IsOn; index++)
        {
            var (left, middle, right) = (order[index - 2], order[index - 1], order[index]);
            if (TopLine.Over(Table.Top(left), Table.Top(middle), Table.Top(right)).IsWithin(level.Limit))
            {
                sum += level.Of((1UL << left) | (1UL << middle) | (1UL << right));
            }
        }

        return sum;
    }

    /// <summary>Whether the plan tells already that three trunks touch or have even gaps.</summary>
    private bool IsTold(int left, int middle, int right)
    {
        ref var known = ref told[(((left * Table.Trunks.Length) + middle) * Table.Trunks.Length) + right];
        if (known == Unknown)
        {
            known = plan.IsTold(evenInView, [Table.Trunks[middle], Table.Trunks[left], Table.Trunks[right]]) ? Told : Untold;
        }

        return known == Told;
    }

    /// <summary>What the checks that look from above tell, so that no view tells it again.</summary>
    private static OneFactOnce PlanFacts(CheckContext context, Limits limits)
    {
        var fresh = new CheckContext(context.Planting, context.State, context.Origins, context.Units);
        foreach (var rule in OneFactOnce.InOrder(Catalogue.Rules).Where(rule => rule.Description.Name is "touching" or "even-gaps"))
        {
            if (!context.Planting.Muted.Any(muted => muted.Check == rule.Description.Name))
            {
                _ = rule.Look(fresh, limits.For(rule.Description)).Count();
            }
        }

        return fresh.Facts;
    }

    private ImmutableArray<(Bearing Side, double Weight)> Sacrificed()
    {
        if (!sacrifice.IsOn)
        {
            return [];
        }

        var check = Catalogue.Find("sacrifice-in-front")!;
        var accepted = Acceptances.KeysOf(context, check);
        return
        [
            .. SacrificeInFront.Facing(context)
                .Where(one => !accepted.Contains(Acceptances.Key(check.Name, one.Work.IsOfAll ? [] : one.Work.Trunks)))
                .Select(one => (one.Facing.Side, sacrifice.Weight)),
        ];
    }

    private static IEnumerable<BearingRange> About(double degrees)
    {
        const double Slack = 1e-9;
        var folded = new Bearing(degrees).Degrees;
        yield return new BearingRange(Math.Max(0, folded - Slack), folded + Slack);
        if (folded < Slack)
        {
            yield return new BearingRange(360 - Slack, 360);
        }
    }
}
