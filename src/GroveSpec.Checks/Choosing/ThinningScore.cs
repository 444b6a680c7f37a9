using System.Collections.Immutable;
using System.Numerics;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Choice;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Choosing;

/// <summary>The score of keeping some of the trunks that stand; docs/thin.md says what goes into it. One score serves one thread.</summary>
internal sealed class ThinningScore : ISubsetScore
{
    /// <summary>What wood off its balance weighs at most, and what evenness of gaps or of sizes weighs over where it begins to count.</summary>
    public const double SoftWeight = 0.5;

    /// <summary>The evenness up to which gaps and sizes are various enough: their standard deviation is then as large as their mean.</summary>
    private const double VariousEnough = 0.5;

    /// <summary>What sizes and balance of the trunks that are kept are mostly sure to add beyond what those of any do: where more is missing, working it out takes longer than it saves.</summary>
    private const double MostlySure = 0.1;

    private readonly NeighbourTable neighbours;
    private readonly PlanPart plan;
    private readonly ImmutableArray<ViewCase> cases;
    private readonly Func<ViewCase, ViewPart> see;
    private readonly Lazy<ViewPart>[] views;
    private readonly ChoiceCheck centred;
    private readonly ChoiceCheck evenCount;
    private readonly List<(int Trunk, bool IsCentred)> largestFirst;
    private readonly int unplaced;
    private IReadOnlyList<(uint Required, uint Allowed, IReadOnlyList<int> Order)>? parts;
    private int lastView;
    private (uint Possible, int Size, int Reach) lastReach;

    // Room for one choice at a time.
    private readonly uint[] near = new uint[NeighbourTable.MostTrunks];
    private readonly uint[] open = new uint[NeighbourTable.MostTrunks];
    private readonly uint[] touching = new uint[NeighbourTable.MostTrunks];
    private readonly uint[] threes = new uint[NeighbourTable.MostTrunks];

    /// <summary>Lays out a planting.</summary>
    /// <param name="context">The planting, of which at most <see cref="NeighbourTable.MostTrunks"/> trunks stand and have a place; those that stand without one stay in any case.</param>
    public ThinningScore(CheckContext context)
    {
        var limits = new Limits(context);
        var trunks = context.Standing;
        neighbours = new(trunks);
        Measures = new(trunks, neighbours, context.Outline);
        TrunkState[] others = [.. context.State.Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: null })];
        Aims = new(context.Planting, trunks, others);
        plan = new(context, limits, neighbours);
        cases = ViewCase.Of(NameOrder.Of(context.State));
        see = seen => new(context, limits, seen);
        views = Unseen();
        (centred, evenCount) = (new(context, limits, "centred-main"), new(context, limits, "even-count"));
        unplaced = others.Length;
        largestFirst = [];
        foreach (var trunk in Rules.CentredMain.LargestFirst(trunks.Trunks))
        {
            largestFirst.Add((trunks.Trunks.IndexOf(trunk), centred.IsOn && Rules.CentredMain.IsCentred(context, trunk, centred.Limit)));
        }
    }

    private ThinningScore(ThinningScore other)
    {
        (neighbours, Measures, Aims, plan, cases, see) = (other.neighbours, other.Measures, other.Aims, other.plan, other.cases, other.see);
        (centred, evenCount, largestFirst, unplaced) = (other.centred, other.evenCount, other.largestFirst, other.unplaced);
        views = Unseen();
    }

    /// <summary>How various gaps and sizes are, and how balanced the wood.</summary>
    public ChoiceMeasures Measures { get; }

    /// <summary>What roles lose.</summary>
    public RoleAims Aims { get; }

    /// <inheritdoc/>
    public IReadOnlyList<(uint Required, uint Allowed, IReadOnlyList<int> Order)> Parts => parts ??=
        [.. views.Select(view => (view.Value.Case.Required, view.Value.Case.Allowed, view.Value.Order))];

    /// <summary>The same score for another thread.</summary>
    /// <returns>A score that shares with this one only what is not written any more.</returns>
    public ThinningScore Another() => new(this);

    /// <inheritdoc/>
    public double Of(uint kept, double enough)
    {
        var size = BitOperations.PopCount(kept);
        var pairs = touching.AsSpan(0, plan.Contacts(kept, touching));
        var sum = OfCount(size) + Aims.Loss(kept) + plan.OfItself(kept, pairs) + OfCentre(kept, kept)
            + OfEvenness(Measures.SizeEvenness(kept)) + (SoftWeight * Measures.Imbalance(kept));
        if (sum > enough)
        {
            return sum;
        }

        neighbours.Fill(kept, kept, ReachOf(kept, size), near, open);
        sum += OfEvenness(Measures.GapEvenness(kept, near)) + plan.OfCompany(kept, near, open, pairs, threes, out var told);
        return sum > enough ? sum : sum + ViewOf(kept, kept).Of(kept, pairs, threes.AsSpan(0, told));
    }

    /// <inheritdoc/>
    public double Bound(uint kept, uint possible, int size, double enough)
    {
        var sum = OfCount(size) + Aims.LeastLoss(kept, possible) + plan.OfItselfAtLeast(kept) + OfCentre(kept, possible) + OfEvenness(Measures.LeastSizeEvenness(size));
        if (sum > enough)
        {
            return sum;
        }

        sum += ViewOf(kept, possible).AtLeast(kept, possible, plan);
        if (sum <= enough && sum + MostlySure > enough)
        {
            sum += OfEvenness(Measures.LeastSizeEvenness(kept, possible, size)) - OfEvenness(Measures.LeastSizeEvenness(size))
                + (SoftWeight * Measures.LeastImbalance(kept, possible, size));
        }

        if (sum > enough || !plan.LooksAtCompany)
        {
            return sum;
        }

        neighbours.Fill(kept, possible, ReachOf(possible, size), near, open);
        return sum + plan.OfCompanyAtLeast(kept, possible, size, near, open);
    }

    /// <inheritdoc/>
    public double Among(int part, uint some, uint possible, int size)
    {
        neighbours.Fill(some, possible, ReachOf(possible, size), near, open);
        return plan.OfItselfAtLeast(some) + views[part].Value.AtLeast(some, possible, plan) + plan.OfThreesAtLeast(some, possible, size, near, open);
    }

    /// <summary>How even the gaps between neighbours are.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>As <see cref="ChoiceMeasures.GapEvenness"/>.</returns>
    public double GapEvenness(uint kept)
    {
        neighbours.Fill(kept, kept, ReachOf(kept, BitOperations.PopCount(kept)), near, open);
        return Measures.GapEvenness(kept, near);
    }

    /// <summary>What evenness adds to the score.</summary>
    /// <param name="evenness">From above 0 to 1.</param>
    /// <returns>From 0 to a quarter.</returns>
    public static double OfEvenness(double evenness) => SoftWeight * Math.Max(0, evenness - VariousEnough);

    /// <summary>What each eye sees is laid out when it is first asked for, since mostly few are.</summary>
    private Lazy<ViewPart>[] Unseen() => [.. cases.Select(seen => new Lazy<ViewPart>(() => see(seen), LazyThreadSafetyMode.None))];

    private double OfCount(int size) => evenCount.IsOn && Rules.EvenCount.IsSplit(size + unplaced) ? evenCount.Of(0) : 0;

    /// <summary>Where the largest of all that may stand is sure to stand, it is known whether it stands in the middle.</summary>
    private double OfCentre(uint kept, uint possible)
    {
        foreach (var (trunk, isCentred) in largestFirst)
        {
            if ((possible >> trunk & 1) != 0)
            {
                return isCentred && (kept >> trunk & 1) != 0 && BitOperations.PopCount(kept) >= 2 ? centred.Of(1u << trunk) : 0;
            }
        }

        return 0;
    }

    /// <summary>How far neighbours reach, which a choice has in common with that before it where only one more was kept.</summary>
    private int ReachOf(uint possible, int size)
    {
        if (lastReach.Possible != possible || lastReach.Size != size)
        {
            lastReach = (possible, size, neighbours.ReachOf(possible, size));
        }

        return lastReach.Reach;
    }

    private ViewPart ViewOf(uint kept, uint possible)
    {
        for (var tried = 0; tried < views.Length; tried++)
        {
            var place = (lastView + tried) % views.Length;
            if ((cases[place].Required & ~kept) == 0 && (possible & ~cases[place].Allowed) == 0)
            {
                lastView = place;
                return views[place].Value;
            }
        }

        throw new ArgumentException("The choices are of several parts.", nameof(kept));
    }
}
