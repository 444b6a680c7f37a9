using System.Numerics;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Choice;
using GroveSpec.Model.Views;

namespace GroveSpec.Checks.Choosing;

/// <summary>What the checks of the view would find if only some trunks stood, weighed, for choices that are seen by one eye.</summary>
internal sealed class ViewPart
{
    private readonly ChoiceCheck even;
    private readonly ChoiceCheck hidden;
    private readonly ChoiceCheck reversed;
    private readonly ChoiceCheck level;
    private readonly ViewTable view;
    private readonly DepthOrder? depth;

    /// <summary>Lays out what is seen.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="limits">Its limits.</param>
    /// <param name="seen">The choices.</param>
    public ViewPart(CheckContext context, Limits limits, ViewCase seen)
    {
        Case = seen;
        (even, hidden) = (new(context, limits, "even-gaps-in-view"), new(context, limits, "hidden-trunk"));
        (reversed, level) = (new(context, limits, "depth-reversed"), new(context, limits, "level-tops"));
        view = new(NameOrder.Of(context.State), seen.Frame, even.Limit, level.Limit);
        depth = context.Planting.Viewed?.Depth;
        var others = Enumerable.Range(0, context.Standing.Count).Where(index => (view.Seen >> index & 1) == 0);
        Order = [.. view.Order, .. others];
    }

    /// <summary>The choices that are seen so.</summary>
    public ViewCase Case { get; }

    /// <summary>All trunks from left to right; those that are not seen last.</summary>
    public IReadOnlyList<int> Order { get; }

    /// <summary>The weight of what is found in the view.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="pairs">The pairs that are told as touching.</param>
    /// <param name="threes">The even gaps that are told, as sets of three.</param>
    /// <returns>The sum.</returns>
    public double Of(uint kept, ReadOnlySpan<uint> pairs, ReadOnlySpan<uint> threes)
    {
        var (sum, covered) = OfHidden(kept);
        int left = -1, middle = -1;
        foreach (var right in even.IsOn ? view.Order : [])
        {
            if ((kept >> right & 1) == 0)
            {
                continue;
            }

            if (left >= 0 && view.IsEven(left, middle, right))
            {
                var three = (1u << left) | (1u << middle) | (1u << right);
                sum += (three & covered) != 0 || PlanPart.HoldsOne(three, pairs) || threes.Contains(three) ? 0 : even.Of(three);
            }

            (left, middle) = (middle, right);
        }

        sum += OfTops(kept, kept);
        if (depth is { } order && reversed.IsOn)
        {
            var (coefficient, number) = view.ThickWithNear(kept & view.Seen);
            sum += Rules.DepthReversed.IsReversed(order, coefficient, number, reversed.Limit) ? reversed.Of(0) : 0;
        }

        return sum;
    }

    /// <summary>The least that <see cref="Of"/> can come to.</summary>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <param name="plan">What is found in the plan, which may tell the same.</param>
    /// <returns>The bound.</returns>
    public double AtLeast(uint kept, uint possible, PlanPart plan)
    {
        var (sum, _) = OfHidden(kept);
        int left = -1, middle = -1;
        foreach (var right in even.IsOn ? view.Order : [])
        {
            if ((possible >> right & 1) == 0)
            {
                continue;
            }

            if ((kept >> right & 1) == 0)
            {
                (left, middle) = (-1, -1);
                continue;
            }

            if (left >= 0 && view.IsEven(left, middle, right))
            {
                var three = (1u << left) | (1u << middle) | (1u << right);
                sum += IsHidden(left, possible) || IsHidden(middle, possible) || IsHidden(right, possible) || plan.MayTouch(three) || plan.MayBeEven(three) ? 0 : even.Of(three);
            }

            (left, middle) = (middle, right);
        }

        return sum + OfTops(kept, possible);
    }

    private (double Sum, uint Covered) OfHidden(uint kept)
    {
        var sum = 0.0;
        var covered = 0u;
        for (var rest = hidden.IsOn ? kept & view.Coverable : 0; rest != 0; rest &= rest - 1)
        {
            if (IsHidden(BitOperations.TrailingZeroCount(rest), kept))
            {
                covered |= rest & (~rest + 1);
                sum += hidden.Of(rest & (~rest + 1));
            }
        }

        return (sum, covered);
    }

    private bool IsHidden(int trunk, uint kept) => hidden.IsOn && view.HiddenPercent(trunk, kept) is > 0 and var percent && percent >= hidden.Limit;

    /// <summary>The weight of the tops that follow each other whatever else comes to stand; with nothing open, of all.</summary>
    private double OfTops(uint kept, uint possible)
    {
        var sum = 0.0;
        int left = -1, middle = -1;
        foreach (var right in level.IsOn ? view.TopOrder : [])
        {
            if ((possible >> right & 1) == 0)
            {
                continue;
            }

            if ((kept >> right & 1) == 0)
            {
                (left, middle) = (-1, -1);
                continue;
            }

            if (left >= 0 && view.IsLevel(left, middle, right))
            {
                sum += level.Of((1u << left) | (1u << middle) | (1u << right));
            }

            (left, middle) = (middle, right);
        }

        return sum;
    }
}
