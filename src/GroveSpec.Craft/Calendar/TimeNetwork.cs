using System.Collections.Immutable;

namespace GroveSpec.Craft.Calendar;

/// <summary>
/// Days that are bounded by the calendar and by each other: a simple temporal network. Source: R. Dechter, I. Meiri and J. Pearl,
/// Temporal constraint networks, Artificial Intelligence 49 (1991). Every bound is one of the kind "at least so long after" or "at
/// most so long after", so the earliest days that meet all bounds can be met at once, and so can the latest. Both are found by
/// relaxing the bounds, to and fro in the order of what waits on what, until nothing moves. Bounds that drive each other on in a
/// circle, and bounds that drive a day past its last one, cannot be met.
/// </summary>
/// <param name="count">How many days there are.</param>
internal sealed partial class TimeNetwork(int count)
{
    private const int MostToTryWithout = 2_000;

    private readonly List<TimeBound> bounds = [];
    private readonly List<TimeLink> links = [];

    /// <summary>Adds a bound by the calendar.</summary>
    /// <param name="bound">The bound.</param>
    public void Add(TimeBound bound) => bounds.Add(bound);

    /// <summary>Adds a bound between two days.</summary>
    /// <param name="link">The bound.</param>
    public void Add(TimeLink link) => links.Add(link);

    /// <summary>Takes out all that some clauses say.</summary>
    /// <param name="clauses">Their numbers.</param>
    public void Remove(HashSet<int> clauses)
    {
        bounds.RemoveAll(bound => clauses.Contains(bound.Clause));
        links.RemoveAll(link => clauses.Contains(link.Clause));
    }

    /// <summary>Finds the earliest and latest days, or what cannot hold together.</summary>
    /// <returns>What follows.</returns>
    public TimeSolution Solve()
    {
        var order = Order();
        var earliest = new Relaxation(this, order, isEarliest: true);
        if (earliest.Conflicts() is { IsEmpty: false } conflicts)
        {
            var (boundsOf, linksOf) = (bounds.ToLookup(bound => bound.Clause), links.ToLookup(link => link.Clause));
            return new([], [], [.. conflicts.Select(conflict => Least(conflict, boundsOf, linksOf))]);
        }

        // What can be met from the one end can be met from the other.
        var latest = new Relaxation(this, order, isEarliest: false);
        _ = latest.Conflicts();
        return new(earliest.Days(), latest.Days(), []);
    }

    /// <summary>
    /// Leaves out of a set of clauses that cannot hold together each one without which the rest cannot either. A set of thousands
    /// is left as it was found: one way round a circle.
    /// </summary>
    private static TimeConflict Least(TimeConflict found, ILookup<int, TimeBound> boundsOf, ILookup<int, TimeLink> linksOf)
    {
        var conflict = found.Clauses;
        if (conflict.Length is 1 or > MostToTryWithout)
        {
            return found;
        }

        var part = conflict.ToHashSet();
        TimeBound[] ownBounds = [.. conflict.SelectMany(clause => boundsOf[clause])];
        TimeLink[] ownLinks = [.. conflict.SelectMany(clause => linksOf[clause])];
        var numbers = new Dictionary<int, int>();
        foreach (var clause in conflict)
        {
            part.Remove(clause);
            if (Conflicts().IsEmpty)
            {
                part.Add(clause);
            }
        }

        return part.Count == conflict.Length ? found : Conflicts()[0];

        ImmutableArray<TimeConflict> Conflicts()
        {
            numbers.Clear();
            var smaller = new TimeNetwork(ownBounds.Length + (2 * ownLinks.Length));
            foreach (var bound in ownBounds)
            {
                if (part.Contains(bound.Clause))
                {
                    smaller.Add(bound with { Node = Number(bound.Node) });
                }
            }

            foreach (var link in ownLinks)
            {
                if (part.Contains(link.Clause))
                {
                    smaller.Add(link with { From = Number(link.From), To = Number(link.To) });
                }
            }

            return new Relaxation(smaller, smaller.Order(), isEarliest: true).Conflicts();
        }

        int Number(int node)
        {
            if (!numbers.TryGetValue(node, out var number))
            {
                numbers.Add(node, number = numbers.Count);
            }

            return number;
        }
    }

    /// <summary>The days in an order in which what comes later by a bound comes later; those in circles at the end.</summary>
    private int[] Order()
    {
        var waiting = new int[count];
        var followers = new Outgoing(count, links.Count);
        for (var index = 0; index < links.Count; index++)
        {
            if (links[index].IsAtLeast && links[index].From != links[index].To)
            {
                waiting[links[index].To]++;
                followers.Add(links[index].From, index);
            }
        }

        var order = new int[count];
        var filled = 0;
        var isPlaced = new bool[count];
        for (var node = 0; node < count; node++)
        {
            if (waiting[node] == 0)
            {
                isPlaced[node] = true;
                order[filled++] = node;
            }
        }

        for (var at = 0; at < filled; at++)
        {
            for (var edge = followers.First(order[at]); edge >= 0; edge = followers.Next(edge))
            {
                var node = links[edge].To;
                if (--waiting[node] == 0)
                {
                    isPlaced[node] = true;
                    order[filled++] = node;
                }
            }
        }

        for (var node = 0; node < count; node++)
        {
            if (!isPlaced[node])
            {
                order[filled++] = node;
            }
        }

        return order;
    }

    /// <summary>Which links begin at a node, as chains through one array.</summary>
    private readonly struct Outgoing
    {
        private readonly int[] first;
        private readonly int[] next;

        public Outgoing(int nodes, int links)
        {
            first = new int[nodes];
            next = new int[links];
            Array.Fill(first, -1);
        }

        public void Add(int node, int link)
        {
            next[link] = first[node];
            first[node] = link;
        }

        public int First(int node) => first[node];

        public int Next(int link) => next[link];
    }
}
