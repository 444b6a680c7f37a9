using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Calendar;

/// <summary>How the bounds of a network drive its days.</summary>
internal sealed partial class TimeNetwork
{
    /// <summary>
    /// Drives every day as far as the bounds drive it: later from the first day of all for the earliest, earlier from the last day
    /// of all for the latest. To tell both with the same words, a day of the second kind is counted backward.
    /// </summary>
    private sealed class Relaxation
    {
        // Months drive a day on by turns of 28 to 31 days, so a circle of them can come to rest; after a year of turns it does not.
        private const int MostSweeps = 500;
        private const int SweepsBeforeCircles = 3;
        private const int Unbound = -1;

        private readonly TimeNetwork network;
        private readonly int[] order;
        private readonly bool isEarliest;
        private readonly int[] day;
        private readonly int[] by;
        private readonly int[] through;
        private readonly bool[] isBound;
        private readonly int?[] limit;
        private readonly int[] limitedBy;
        private readonly Outgoing driven;

        public Relaxation(TimeNetwork network, int[] order, bool isEarliest)
        {
            (this.network, this.order, this.isEarliest) = (network, order, isEarliest);
            var count = order.Length;
            (day, by, through, isBound) = (new int[count], new int[count], new int[count], new bool[count]);
            (limit, limitedBy) = (new int?[count], new int[count]);
            Array.Fill(day, isEarliest ? DayCount.FirstDay : DayCount.LastDay);
            Array.Fill(by, Unbound);
            Array.Fill(through, Unbound);
            foreach (var bound in network.bounds)
            {
                if (bound.IsEarliest == isEarliest)
                {
                    if (by[bound.Node] == Unbound || IsFurther(bound.Day, day[bound.Node]))
                    {
                        (day[bound.Node], by[bound.Node], isBound[bound.Node]) = (bound.Day, bound.Clause, true);
                    }
                }
                else if (limit[bound.Node] is not { } other || IsFurther(other, bound.Day))
                {
                    (limit[bound.Node], limitedBy[bound.Node]) = (bound.Day, bound.Clause);
                }
            }

            driven = new Outgoing(count, network.links.Count);
            for (var index = 0; index < network.links.Count; index++)
            {
                driven.Add(SourceOf(network.links[index]), index);
            }
        }

        /// <summary>Drives the days on.</summary>
        /// <returns>What cannot hold together; nothing when all bounds are met.</returns>
        public ImmutableArray<TimeConflict> Conflicts()
        {
            for (var sweep = 0; Sweep(isForward: (sweep % 2 == 0) == isEarliest); sweep++)
            {
                if (Overdriven() is { IsEmpty: false } conflicts)
                {
                    return conflicts;
                }

                if (sweep >= SweepsBeforeCircles && Circles(at => sweep >= MostSweeps || IsOfDays(at)) is { IsEmpty: false } circles)
                {
                    return circles;
                }
            }

            // A circle of months may have come to rest, and then its bounds are met; unless it rests beyond the calendar.
            return Overdriven() is { IsEmpty: false } found ? found : Circles(IsOut);
        }

        /// <summary>The days; null for those that no bound by the calendar drives, and for those driven out of it.</summary>
        public int?[] Days() => [.. day.Select((reached, node) => isBound[node] && !IsOut(node) ? reached : (int?)null)];

        private bool IsOut(int node) => day[node] < DayCount.FirstDay || day[node] > DayCount.LastDay;

        private bool IsFurther(int one, int other) => isEarliest ? one > other : one < other;

        private int SourceOf(TimeLink link) => link.IsAtLeast == isEarliest ? link.From : link.To;

        private int TargetOf(TimeLink link) => link.IsAtLeast == isEarliest ? link.To : link.From;

        private bool Sweep(bool isForward)
        {
            var isMoved = false;
            for (var index = 0; index < order.Length; index++)
            {
                var node = order[isForward ? index : order.Length - 1 - index];
                if (IsOut(node))
                {
                    // Driven out of the calendar: what follows is driven no further by it.
                    continue;
                }

                for (var edge = driven.First(node); edge >= 0; edge = driven.Next(edge))
                {
                    var link = network.links[edge];
                    var target = TargetOf(link);
                    var reached = Driven(link, day[node]);
                    if (IsFurther(reached, day[target]))
                    {
                        (day[target], by[target], through[target], isBound[target]) = (reached, link.Clause, edge, isBound[node]);
                        isMoved = true;
                    }
                }
            }

            return isMoved;
        }

        private ImmutableArray<TimeConflict> Overdriven()
        {
            var conflicts = ImmutableArray.CreateBuilder<TimeConflict>();
            HashSet<int>? taken = null;
            for (var node = 0; node < order.Length; node++)
            {
                if (limit[node] is { } last && IsFurther(day[node], last))
                {
                    var clauses = Path(node);
                    clauses.Add(limitedBy[node]);
                    taken ??= [];
                    if (!clauses.Overlaps(taken))
                    {
                        taken.UnionWith(clauses);
                        conflicts.Add(new([.. clauses.Order()], Math.Abs(day[node] - last)));
                    }
                }
            }

            return conflicts.ToImmutable();
        }

        /// <summary>The clauses that have driven a day to where it is; only those of the circle when one drives it.</summary>
        private HashSet<int> Path(int node)
        {
            var clauses = new HashSet<int>();
            var seen = new HashSet<int>();
            for (var at = node; ; at = SourceOf(network.links[through[at]]))
            {
                if (!seen.Add(at))
                {
                    return [.. ClausesRound(at)];
                }

                if (by[at] != Unbound)
                {
                    clauses.Add(by[at]);
                }

                if (through[at] == Unbound)
                {
                    return clauses;
                }
            }
        }

        private IEnumerable<int> ClausesRound(int node)
        {
            var at = node;
            do
            {
                yield return by[at];
                at = SourceOf(network.links[through[at]]);
            }
            while (at != node);
        }

        /// <summary>The clauses of each circle of days that drive each other on, no two with a clause in common.</summary>
        private ImmutableArray<TimeConflict> Circles(Func<int, bool> isMeant)
        {
            var circles = ImmutableArray.CreateBuilder<TimeConflict>();
            HashSet<int>? taken = null;
            var passed = new int[order.Length];
            for (var start = 0; start < order.Length; start++)
            {
                var at = start;
                while (passed[at] == 0 && through[at] != Unbound)
                {
                    passed[at] = start + 1;
                    at = SourceOf(network.links[through[at]]);
                }

                if (through[at] != Unbound && passed[at] == start + 1 && isMeant(at))
                {
                    HashSet<int> clauses = [.. ClausesRound(at)];
                    taken ??= [];
                    if (!clauses.Overlaps(taken))
                    {
                        taken.UnionWith(clauses);
                        circles.Add(new([.. clauses.Order()], GainRound(at)));
                    }
                }
            }

            return circles.ToImmutable();
        }

        /// <summary>How many days a circle drives each of its days on in one turn; one where it drives them out of the calendar.</summary>
        private int GainRound(int node)
        {
            var edges = new Stack<int>();
            var at = node;
            do
            {
                edges.Push(through[at]);
                at = SourceOf(network.links[through[at]]);
            }
            while (at != node);
            var start = Math.Clamp(day[node], DayCount.FirstDay, DayCount.LastDay);
            var reached = start;
            while (edges.TryPop(out var edge) && reached >= DayCount.FirstDay && reached <= DayCount.LastDay)
            {
                reached = Driven(network.links[edge], reached);
            }

            return Math.Max(1, Math.Abs(reached - start));
        }

        private int Driven(TimeLink link, int from) => link.IsAtLeast == isEarliest ? DayCount.Shift(from, link.Count, link.Unit)
            : isEarliest ? DayCount.FirstLeadingTo(from, link.Count, link.Unit)
            : DayCount.LastLeadingTo(from, link.Count, link.Unit);

        private bool IsOfDays(int node)
        {
            var at = node;
            do
            {
                if (network.links[through[at]].Unit is TimeUnit.Months or TimeUnit.Years)
                {
                    return false;
                }

                at = SourceOf(network.links[through[at]]);
            }
            while (at != node);
            return true;
        }
    }
}
