using System.Collections.Immutable;
using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Fronts;

/// <summary>
/// The bearings at which what is found in a view can change: where two trunks, their tops or the edges of what they cover stand at one
/// place across, where one comes to be nearer than another, and where a measure comes to its limit. Between two that follow
/// each other nothing begins and nothing ends.
/// </summary>
public static class CriticalBearings
{
    /// <summary>What rounding to a nanometre may do to the difference of two places, in millimetres.</summary>
    private const double Rounding = 1e-5;

    /// <summary>What is left of it where squares are compared, in square millimetres.</summary>
    private const double SquareRounding = 1e-6;

    /// <summary>Finds them.</summary>
    /// <param name="table">The planting.</param>
    /// <param name="outline">The container's rim; null without one.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>
    /// Ranges about them, mostly narrower than a millionth of a degree, in order and apart, within one turn from 0 degrees on.
    /// A measure that stays at its limit gives a wide range, in which every bearing has to be looked at by itself.
    /// </returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static ImmutableArray<BearingRange> Find(TurnTable table, ContainerOutline? outline, FrontLimits limits, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(limits);
        var shapes = new TurnedShapes(table.Trunks, table.Frame);
        var found = new List<(double From, double To)>();
        FindOrders(shapes, table, limits, found, cancellation);
        if (outline is not null && limits.Centred is { } centred)
        {
            foreach (var side in (ReadOnlySpan<double>)[-1, 1])
            {
                NearZero.Find(
                    range =>
                    {
                        var (offset, width) = shapes.OffCentre(range, outline, centred);
                        return (side * offset) - ((limits.CentredPercent / 100) * width);
                    },
                    0,
                    Math.Tau,
                    Rounding,
                    found);
            }
        }

        // Between two bearings at which an order changes, each measure is one expression, which lasts as long as what it is made of.
        var measures = new FrontMeasures(shapes, limits, found);
        var end = 0.0;
        foreach (var (from, to) in Merged(found).Append((Math.Tau, Math.Tau)).ToList())
        {
            cancellation.ThrowIfCancellationRequested();
            if (from > end)
            {
                table.Turn(new Bearing((end + from) / 2 * 180 / Math.PI));
                measures.Look(table, end, from);
            }

            end = Math.Max(end, to);
        }

        measures.Finish();
        return [.. Merged(found).Select(range => new BearingRange(Math.Max(range.From, 0) * 180 / Math.PI, Math.Min(range.To * 180 / Math.PI, 360)))];
    }

    private static void FindOrders(TurnedShapes shapes, TurnTable table, FrontLimits limits, List<(double From, double To)> found, CancellationToken cancellation)
    {
        var count = table.Trunks.Length;
        var seen = new List<(double From, double To)>[count];
        var seenTips = new List<(double From, double To)>[count];
        for (var trunk = 0; trunk < count; trunk++)
        {
            var own = trunk;
            seen[trunk] = WhereAbove(range => shapes.Clearance(range, own), found);
            seenTips[trunk] = shapes.HasTip(trunk) ? Common(seen[trunk], WhereAbove(range => shapes.TipClearance(range, own), found)) : [];
        }

        for (var one = 0; one < count; one++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (var other = one + 1; other < count; other++)
            {
                var (first, second) = (one, other);
                if (limits.LevelPercent is not null && shapes.HasTip(one) && shapes.HasTip(other) && !shapes.IsTipOver(one, other))
                {
                    Find(range => shapes.Tip(range, first).Across - shapes.Tip(range, second).Across, Common(seenTips[one], seenTips[other]), Rounding, found);
                }

                // Two at one place are and stay in the order of their numbers or of their thickness.
                if (!shapes.IsSamePlace(one, other))
                {
                    FindOrder(shapes, one, other, limits, Common(seen[one], seen[other]), found);
                }
            }
        }
    }

    private static void FindOrder(TurnedShapes shapes, int one, int other, FrontLimits limits, List<(double From, double To)> within, List<(double From, double To)> found)
    {
        Find(range => shapes.Foot(range, one) - shapes.Foot(range, other), within, Rounding, found);
        if (limits.IsDepthAsked)
        {
            Find(range => shapes.Depth(range, one) - shapes.Depth(range, other), within, Rounding, found);
        }

        if (limits.HiddenPercent is not null)
        {
            Find(range => shapes.Power(range, one) - shapes.Power(range, other), within, SquareRounding, found);
            foreach (var (sideOfOne, sideOfOther) in (ReadOnlySpan<(int, int)>)[(-1, -1), (-1, 1), (1, -1), (1, 1)])
            {
                Find(range => shapes.Edge(range, one, sideOfOne) - shapes.Edge(range, other, sideOfOther), within, Rounding, found);
            }
        }
    }

    private static void Find(Func<TurnRange, Ranged> expression, List<(double From, double To)> within, double tolerance, List<(double From, double To)> found)
    {
        foreach (var (from, to) in within)
        {
            NearZero.Find(expression, from, to, tolerance, found);
        }
    }

    /// <summary>Finds where an expression comes to nothing, and gives back the ranges between in which it is above.</summary>
    private static List<(double From, double To)> WhereAbove(Func<TurnRange, Ranged> expression, List<(double From, double To)> found)
    {
        var borders = new List<(double From, double To)>();
        NearZero.Find(expression, 0, Math.Tau, Rounding, borders);
        found.AddRange(borders);
        var above = new List<(double From, double To)>();
        var end = 0.0;
        foreach (var (from, to) in Merged(borders).Append((Math.Tau, Math.Tau)))
        {
            if (from > end && expression(new((end + from) / 2, (end + from) / 2)).Low > 0)
            {
                above.Add((end, from));
            }

            end = Math.Max(end, to);
        }

        return above;
    }

    private static List<(double From, double To)> Common(List<(double From, double To)> some, List<(double From, double To)> others) =>
    [
        .. from one in some
           from other in others
           let range = (From: Math.Max(one.From, other.From), To: Math.Min(one.To, other.To))
           where range.From < range.To
           select range,
    ];

    private static List<(double From, double To)> Merged(List<(double From, double To)> found)
    {
        var merged = new List<(double From, double To)>();
        foreach (var range in found.OrderBy(range => range.From).ThenBy(range => range.To))
        {
            if (merged.Count > 0 && range.From <= merged[^1].To)
            {
                merged[^1] = (merged[^1].From, Math.Max(merged[^1].To, range.To));
            }
            else
            {
                merged.Add(range);
            }
        }

        return merged;
    }
}
