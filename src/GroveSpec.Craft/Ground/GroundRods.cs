using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Ground;

/// <summary>The straight rods through three trunks of which a newcomer may be one, as <see cref="RodSearch"/> finds them.</summary>
public sealed class GroundRods
{
    private const double Allowed = 1e-9;

    private readonly GroundStand stand;
    private readonly double limit;
    private readonly double longest;

    /// <summary>Lays out the tables.</summary>
    /// <param name="stand">The trunks.</param>
    /// <param name="limit">The largest closeness that counts, a bare ratio.</param>
    public GroundRods(GroundStand stand, double limit)
    {
        ArgumentNullException.ThrowIfNull(stand);
        (this.stand, this.limit) = (stand, limit);
        foreach (var section in stand.Sections)
        {
            longest = Math.Max(longest, section.Diameter.Nanometres);
        }
    }

    /// <summary>The rods through the newcomer that need only its own neighbours to be known: through any two others of a few trunks, else between two of its neighbours.</summary>
    /// <param name="found">Takes the three trunks of each, as a set; long enough for half the square of their number.</param>
    /// <param name="most">After how many to stop.</param>
    /// <returns>How many were found.</returns>
    public int OfOwn(Span<ulong> found, int most)
    {
        var count = 0;
        if (!stand.ReachesAnyDistance)
        {
            var own = stand.Own;
            for (var first = 0; first < own.Length; first++)
            {
                for (var second = first + 1; second < own.Length && count < most; second++)
                {
                    count += Look(stand.Newcomer, own[first], own[second], found[count..]);
                }
            }

            return count;
        }

        for (var first = 0; first < stand.Count; first++)
        {
            for (var second = first + 1; second < stand.Count && first != stand.Newcomer && count < most; second++)
            {
                if (second != stand.Newcomer)
                {
                    count += Look(stand.Newcomer, first, second, found[count..]) == 1 || Look(first, stand.Newcomer, second, found[count..]) == 1 || Look(second, stand.Newcomer, first, found[count..]) == 1 ? 1 : 0;
                }
            }
        }

        return count;
    }

    /// <summary>The rods that end at the newcomer, with a neighbour of it in the middle; none where any distance is reached, since those are found already. After <see cref="GroundStand.Connect"/>.</summary>
    /// <param name="found">Takes the three trunks of each, as a set.</param>
    /// <param name="most">After how many to stop.</param>
    /// <returns>How many were found.</returns>
    public int OfEnds(Span<ulong> found, int most)
    {
        var count = 0;
        if (stand.ReachesAnyDistance)
        {
            return count;
        }

        foreach (var middle in stand.Own)
        {
            foreach (var other in stand.NeighboursOf(middle))
            {
                if (other != stand.Newcomer && count < most)
                {
                    count += Look(middle, stand.Newcomer, other, found[count..]);
                }
            }
        }

        return count;
    }

    /// <summary>The rods among the others that are told when both ends are neighbours of the middle.</summary>
    /// <returns>For each the three trunks, as a set, and the two pairs, as places in the stand's own table; −1 for both where any distance is reached.</returns>
    public IEnumerable<(ulong Three, int FirstPair, int SecondPair)> OfOthers()
    {
        var pairOf = new Dictionary<(int, int), int>();
        for (var index = 0; index < stand.OldPairs.Length; index++)
        {
            var (first, second, _, _) = stand.OldPairs[index];
            pairOf[(first, second)] = pairOf[(second, first)] = index;
        }

        var found = new List<(ulong, int, int)>();
        Span<ulong> three = stackalloc ulong[1];
        for (var middle = 0; middle < stand.Count; middle++)
        {
            for (var first = 0; first < stand.Count; first++)
            {
                for (var second = first + 1; second < stand.Count; second++)
                {
                    var (one, other) = (-1, -1);
                    var isLinked = stand.ReachesAnyDistance || (pairOf.TryGetValue((middle, first), out one) && pairOf.TryGetValue((middle, second), out other));
                    if (middle != first && middle != second && middle != stand.Newcomer && first != stand.Newcomer && second != stand.Newcomer
                        && isLinked && Look(middle, first, second, three) == 1)
                    {
                        found.Add((three[0], stand.ReachesAnyDistance ? -1 : one, stand.ReachesAnyDistance ? -1 : other));
                    }
                }
            }
        }

        return found;
    }

    /// <summary>Whether two of the others are neighbours now.</summary>
    /// <param name="pair">The pair as <see cref="OfOthers"/> gives it.</param>
    /// <returns>True when they are, or when any distance is reached.</returns>
    public bool AreNeighbours(int pair) => pair < 0 || stand.IsAlive[pair];

    private int Look(int middle, int one, int other, Span<ulong> found)
    {
        var (first, second) = one < other ? (one, other) : (other, one);
        if (!MayPass(middle, first, second, out var isSure))
        {
            return 0;
        }

        var sections = stand.Sections;
        TrunkSection m = sections[middle], a = sections[first], b = sections[second];
        if (m.Diameter.Nanometres == 0 || a.Diameter.Nanometres == 0 || b.Diameter.Nanometres == 0 || !RodSearch.IsMiddle(middle, first, second, sections)
            || !(isSure || Rod.Passes(a, m, b, limit)))
        {
            return 0;
        }

        found[0] = (1UL << middle) | (1UL << first) | (1UL << second);
        return 1;
    }

    /// <summary>Leaves out in numbers of 53 bits what surely passes no rod or has another middle, and says what surely passes one.</summary>
    private bool MayPass(int middle, int first, int second, out bool isSure)
    {
        ReadOnlySpan<double> x = stand.X, y = stand.Y;
        double toFirstX = x[first] - x[middle], toFirstY = y[first] - y[middle], toSecondX = x[second] - x[middle], toSecondY = y[second] - y[middle];
        double acrossX = x[second] - x[first], acrossY = y[second] - y[first];
        double left = (toFirstX * toFirstX) + (toFirstY * toFirstY), right = (toSecondX * toSecondX) + (toSecondY * toSecondY);
        var across = (acrossX * acrossX) + (acrossY * acrossY);
        isSure = false;
        double one = toFirstX * toSecondY, other = toFirstY * toSecondX;
        var cross = 2 * Math.Abs(one - other);
        var error = Allowed * (Math.Abs(one) + Math.Abs(other));

        // The difference of diameters along one side and the sum along the other come to at most three of the thickest.
        var far = 3 * longest * limit;
        if (across < Math.Max(left, right) * (1 - Allowed) || (cross - error) * (cross - error) > far * far * across * (1 + Allowed) * (1 + Allowed))
        {
            return cross <= error && across >= Math.Max(left, right) * (1 - Allowed);
        }

        var sections = stand.Sections;
        double m = sections[middle].Diameter.Nanometres, a = sections[first].Diameter.Nanometres, b = sections[second].Diameter.Nanometres;
        var most = Math.Sqrt(Math.Max(
            Square(((a - b) * toFirstX) + ((a + m) * acrossX), ((a - b) * toFirstY) + ((a + m) * acrossY)),
            Math.Max(
                Square(((m + b) * toFirstX) - ((m - a) * toSecondX), ((m + b) * toFirstY) - ((m - a) * toSecondY)),
                Square(((b - m) * acrossX) - ((b + a) * toSecondX), ((b - m) * acrossY) - ((b + a) * toSecondY))))) * limit;
        isSure = cross + error < most * (1 - Allowed);
        return isSure || cross - error <= most * (1 + Allowed);
    }

    private static double Square(double x, double y) => (x * x) + (y * y);
}
