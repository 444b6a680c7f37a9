using System.Numerics;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Choice;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Model;
using GroveSpec.Model.Roles;

namespace GroveSpec.Checks.Choosing;

/// <summary>What the checks of the plan and of sizes would find if only some trunks stood, weighed.</summary>
internal sealed class PlanPart
{
    private readonly NeighbourTable table;
    private readonly ChoiceCheck rods;
    private readonly ChoiceCheck gaps;
    private readonly ChoiceCheck twinDiameters;
    private readonly ChoiceCheck twinHeights;
    private readonly ChoiceCheck wide;
    private readonly ChoiceCheck thin;
    private readonly ChoiceCheck touching;
    private readonly ContactTable contacts;
    private readonly RodTable stoolRods;
    private readonly RodTable sureRods;
    private readonly EvenGapTable evenGaps;
    private readonly HashSet<uint> evenThrees = [];
    private readonly (uint Ends, double Share)[][] sureGaps;
    private readonly TwinTable alikeDiameters;
    private readonly TwinTable alikeHeights;
    private readonly SizeOrderTable order;
    private readonly double[] ownWeights;
    private readonly uint weighed;

    /// <summary>Lays out a planting.</summary>
    /// <param name="context">The planting, of which at most <see cref="NeighbourTable.MostTrunks"/> trunks stand and have a place.</param>
    /// <param name="limits">Its limits.</param>
    /// <param name="table">Which of them are neighbours.</param>
    public PlanPart(CheckContext context, Limits limits, NeighbourTable table)
    {
        this.table = table;
        (rods, gaps) = (new(context, limits, "three-in-line"), new(context, limits, "even-gaps"));
        (twinDiameters, twinHeights) = (new(context, limits, "twin-diameters"), new(context, limits, "twin-heights"));
        (wide, thin, touching) = (new(context, limits, "wide-but-short"), new(context, limits, "thin-but-tall"), new(context, limits, "touching"));
        var trunks = context.Standing;
        contacts = new(trunks, context.Planting.EffectiveHabit == Habit.Clump);
        stoolRods = new(trunks, rods.Limit, three => !rods.Accepts(three));
        sureRods = new(trunks, rods.Limit, three => !rods.Accepts(three) && !MayTouch(three));
        evenGaps = new(trunks, gaps.Limit);
        sureGaps = SureGaps(trunks.Count);
        alikeDiameters = new(trunks, trunk => trunk.Diameter?.Value, twinDiameters.Limit);
        alikeHeights = new(trunks, trunk => trunk.Height?.Value, twinHeights.Limit);
        order = new(trunks, wide.Limit, thin.Limit, index => HasForm(context, index, Form.Stout), index => HasForm(context, index, Form.Slender));
        ownWeights = OwnWeights(context, limits);
        weighed = ownWeights.Select((weight, trunk) => weight != 0 ? 1u << trunk : 0).Aggregate(0u, (set, bit) => set | bit);
    }

    /// <summary>Whether any check is on that looks at neighbours.</summary>
    public bool LooksAtCompany => rods.IsOn || gaps.IsOn || twinDiameters.IsOn || twinHeights.IsOn || wide.IsOn || thin.IsOn;

    /// <summary>The trunks that touch, where that check is on.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="pairs">Takes the pairs that are told, as sets.</param>
    /// <returns>How many pairs there are.</returns>
    public int Contacts(uint kept, Span<uint> pairs) => touching.IsOn ? contacts.Find(kept, pairs) : 0;

    /// <summary>Whether any two of three trunks might be told as touching.</summary>
    /// <param name="three">The three, as a set.</param>
    /// <returns>False when no two of them touch.</returns>
    public bool MayTouch(uint three)
    {
        for (var rest = three; rest != 0 && touching.IsOn; rest &= rest - 1)
        {
            if ((contacts.ReachedBy(BitOperations.TrailingZeroCount(rest)) & three) != 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether three trunks have two gaps that are alike, open or not.</summary>
    /// <param name="three">The three, as a set.</param>
    /// <returns>True when they have.</returns>
    public bool MayBeEven(uint three) => gaps.IsOn && evenThrees.Contains(three);

    /// <summary>The weight of what each trunk would be found for by itself, and of those that touch.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="pairs">The pairs that are told as touching.</param>
    /// <returns>The sum.</returns>
    public double OfItself(uint kept, ReadOnlySpan<uint> pairs)
    {
        var sum = OwnWeight(kept);
        foreach (var pair in pairs)
        {
            sum += touching.Of(pair);
        }

        return sum;
    }

    /// <summary>The least that <see cref="OfItself"/> can come to.</summary>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <returns>The bound.</returns>
    public double OfItselfAtLeast(uint kept)
    {
        var sum = OwnWeight(kept);
        for (var rest = touching is { IsOn: true, HasAccepted: false } ? kept & contacts.Touching : 0; rest != 0; rest &= rest - 1)
        {
            sum += (contacts.ReachedBy(BitOperations.TrailingZeroCount(rest)) & kept) != 0 ? touching.Weight : 0;
        }

        return sum;
    }

    /// <summary>The weight of the lines, the even gaps and the sizes.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="neighbours">Their neighbours.</param>
    /// <param name="open">Those to which the gap is open.</param>
    /// <param name="pairs">The pairs that are told as touching.</param>
    /// <param name="threes">Takes the even gaps that are told, as sets of three.</param>
    /// <param name="told">How many those are.</param>
    /// <returns>The sum.</returns>
    public double OfCompany(uint kept, ReadOnlySpan<uint> neighbours, ReadOnlySpan<uint> open, ReadOnlySpan<uint> pairs, Span<uint> threes, out int told)
    {
        var sum = 0.0;
        if (rods.IsOn)
        {
            Span<uint> all = stackalloc uint[NeighbourTable.MostTrunks];
            sum += rods.Weight * Rods(kept, Ends(kept, BitOperations.PopCount(kept), neighbours, all), pairs);
        }

        told = 0;
        var found = gaps.IsOn ? evenGaps.Find(kept, open, threes) : 0;
        for (var place = 0; place < found; place++)
        {
            if (!HoldsOne(threes[place], pairs))
            {
                sum += gaps.Of(threes[place]);
                threes[told++] = threes[place];
            }
        }

        sum += OfTwins(twinDiameters, alikeDiameters, kept, neighbours) + OfTwins(twinHeights, alikeHeights, kept, neighbours);
        var (wideButShort, tallButThin) = wide.IsOn || thin.IsOn ? order.Find(kept) : (0, 0);
        return sum + EachOf(wide, wideButShort) + EachOf(thin, tallButThin);
    }

    /// <summary>The least that <see cref="OfCompany"/> can come to.</summary>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <param name="size">How many stand in the end.</param>
    /// <param name="neighbours">The neighbours that those kept are sure to be.</param>
    /// <param name="open">Those to which the gap is sure to be open.</param>
    /// <returns>The bound.</returns>
    public double OfCompanyAtLeast(uint kept, uint possible, int size, ReadOnlySpan<uint> neighbours, ReadOnlySpan<uint> open) =>
        OfThreesAtLeast(kept, possible, size, neighbours, open) + SureTwins(twinDiameters, alikeDiameters, kept, possible, neighbours) + SureTwins(twinHeights, alikeHeights, kept, possible, neighbours);

    /// <summary>As <see cref="OfCompanyAtLeast"/>, without what may be one and the same for two parts of the trunks: groups of twins, which may grow together.</summary>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <param name="size">How many stand in the end.</param>
    /// <param name="neighbours">The neighbours that those kept are sure to be.</param>
    /// <param name="open">Those to which the gap is sure to be open.</param>
    /// <returns>The bound.</returns>
    public double OfThreesAtLeast(uint kept, uint possible, int size, ReadOnlySpan<uint> neighbours, ReadOnlySpan<uint> open)
    {
        var sum = 0.0;
        if (rods.IsOn)
        {
            Span<uint> all = stackalloc uint[NeighbourTable.MostTrunks];
            sum += rods.Weight * sureRods.Number(kept, Ends(kept, size, neighbours, all));
        }

        if (gaps.IsOn)
        {
            for (var rest = kept; rest != 0; rest &= rest - 1)
            {
                sum += gaps.Weight * SureEvenGaps(BitOperations.TrailingZeroCount(rest), possible, open[BitOperations.TrailingZeroCount(rest)]);
            }
        }

        return wide.IsOn && thin.IsOn && wide.Limit == thin.Limit && !wide.HasAccepted && !thin.HasAccepted
            ? sum + (order.LeastTold(kept) * Math.Min(wide.Weight, thin.Weight))
            : sum;
    }

    /// <summary>Whether a set of three holds a pair that is told.</summary>
    /// <param name="three">The three, as a set.</param>
    /// <param name="pairs">The pairs.</param>
    /// <returns>True when it does.</returns>
    public static bool HoldsOne(uint three, ReadOnlySpan<uint> pairs)
    {
        foreach (var pair in pairs)
        {
            if ((pair & ~three) == 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The trunks that may be the ends of a rod through each: its neighbours, and where few stand all.</summary>
    private static ReadOnlySpan<uint> Ends(uint kept, int size, ReadOnlySpan<uint> neighbours, Span<uint> all)
    {
        if (size >= StandingTrunks.ReachMattersFrom)
        {
            return neighbours;
        }

        all.Fill(kept);
        return all;
    }

    /// <summary>How many rods are told: none through two trunks that are told as touching.</summary>
    private int Rods(uint kept, ReadOnlySpan<uint> ends, ReadOnlySpan<uint> pairs)
    {
        if (pairs.IsEmpty)
        {
            return stoolRods.Number(kept, ends);
        }

        var told = 0;
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var middle = BitOperations.TrailingZeroCount(rest);
            for (var first = ends[middle]; first != 0; first &= first - 1)
            {
                var end = BitOperations.TrailingZeroCount(first);
                for (var second = stoolRods.Beyond(middle, end) & ends[middle]; second != 0; second &= second - 1)
                {
                    told += HoldsOne((1u << middle) | (1u << end) | (1u << BitOperations.TrailingZeroCount(second)), pairs) ? 0 : 1;
                }
            }
        }

        return told;
    }

    /// <summary>How many even gaps of its own a trunk is sure to have: where up to two others may have the same one its share, none where it may be left untold.</summary>
    private double SureEvenGaps(int trunk, uint possible, uint open)
    {
        var first = evenGaps.FirstOpen(trunk, open);
        if (first < 0)
        {
            return 0;
        }

        // More alike ones that come to be open are told in its place.
        var alike = sureGaps[trunk];
        var share = alike[first].Share;
        for (var place = 0; place < first && share > 0; place++)
        {
            if (alike[place].Share < share && (alike[place].Ends & ~possible) == 0)
            {
                share = alike[place].Share;
            }
        }

        return share;
    }

    /// <summary>The gaps at each trunk that are alike, the most alike first: a third of one where others may have the same, none of one that may be left untold.</summary>
    private (uint Ends, double Share)[][] SureGaps(int trunks)
    {
        var shared = new HashSet<uint>();
        for (var trunk = 0; trunk < trunks; trunk++)
        {
            foreach (var (_, _, three, _) in evenGaps.Of(trunk))
            {
                if (!evenThrees.Add(three))
                {
                    shared.Add(three);
                }
            }
        }

        return [.. Enumerable.Range(0, trunks).Select(trunk => evenGaps.Of(trunk).ToArray().Select(gap => (gap.Ends, Share(gap.Three))).ToArray())];

        double Share(uint three) => gaps.Accepts(three) || MayTouch(three) ? 0 : shared.Contains(three) ? 1.0 / 3 : 1;
    }

    private static double OfTwins(ChoiceCheck check, TwinTable twins, uint kept, ReadOnlySpan<uint> neighbours)
    {
        if (!check.IsOn)
        {
            return 0;
        }

        Span<uint> groups = stackalloc uint[NeighbourTable.MostTrunks];
        var found = twins.Find(kept, neighbours, groups);
        var sum = 0.0;
        foreach (var group in groups[..found])
        {
            sum += check.Of(group);
        }

        return sum;
    }

    private double SureTwins(ChoiceCheck check, TwinTable twins, uint kept, uint possible, ReadOnlySpan<uint> neighbours) =>
        check is { IsOn: true, HasAccepted: false } ? check.Weight * twins.LeastGroups(kept, possible, neighbours, table) : 0;

    private static double EachOf(ChoiceCheck check, uint trunks)
    {
        var sum = 0.0;
        for (var rest = check.IsOn ? trunks : 0; rest != 0; rest &= rest - 1)
        {
            sum += check.Of(rest & (~rest + 1));
        }

        return sum;
    }

    private double OwnWeight(uint kept)
    {
        var sum = 0.0;
        for (var rest = kept & weighed; rest != 0; rest &= rest - 1)
        {
            sum += ownWeights[BitOperations.TrailingZeroCount(rest)];
        }

        return sum;
    }

    private static double[] OwnWeights(CheckContext context, Limits limits)
    {
        var trunks = context.Standing.Trunks;
        var weights = new double[trunks.Length];
        if (context.Outline is { } outline)
        {
            ChoiceCheck near = new(context, limits, "near-rim"), off = new(context, limits, "off-container");
            for (var index = 0; index < weights.Length; index++)
            {
                var room = RimRoom.Of(outline, trunks[index]);
                var check = room < default(Model.Quantities.Length) ? off : Rules.NearRim.IsNear(room, near.Limit) ? near : null;
                weights[index] = check is { IsOn: true } ? check.Of(1u << index) : 0;
            }
        }

        return weights;
    }

    private static bool HasForm(CheckContext context, int index, Form form) =>
        context.Planting.RoleOf(context.Standing.Trunks[index].Trunk)?.Form?.Value == form;
}
