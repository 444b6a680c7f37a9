using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>The runs of free places and of others that follow each other round a square, and which of them are joined across it.</summary>
internal sealed class GroundRuns
{
    private const int MostWeighed = 7;
    private const int WayWeight = 3;
    private const int Parts = 2;
    private const int NarrowParts = 24;

    private readonly List<(PlanPoint Place, int Taker, int Crossing)> places;
    private readonly List<List<int>> taken = [];
    private readonly List<List<int>> free = [];
    private readonly int[] takers;

    /// <summary>Parts places into runs.</summary>
    /// <param name="places">Places round a square, anticlockwise; what takes each, 0 for free ones; and the crossing behind it.</param>
    public GroundRuns(List<(PlanPoint Place, int Taker, int Crossing)> places)
    {
        this.places = places;
        takers = [.. places.Select(place => place.Taker).Where(taker => taker > 0).Distinct()];
        var count = places.Count;
        for (var first = 0; first < count; first++)
        {
            if (places[first].Taker != 0 && places[(first + count - 1) % count].Taker == 0)
            {
                // Before each run that is taken comes the free one of its number.
                taken.Add(Run(first, 1));
                free.Add(Run((first + count - 1) % count, count - 1));
            }
        }
    }

    /// <summary>The crossing at which free ground is left for a run that is taken.</summary>
    /// <param name="run">The run.</param>
    /// <returns>The crossing.</returns>
    public int Start(int run) => places[(taken[run][0] + places.Count - 1) % places.Count].Crossing;

    /// <summary>The crossing at which free ground is entered behind a run that is taken.</summary>
    /// <param name="run">The run.</param>
    /// <returns>The crossing.</returns>
    public int End(int run) => places[taken[run][^1]].Crossing;

    /// <summary>
    /// Which runs that are taken are joined across the square, none across what joins others: as the straight ways across it tell
    /// that are taken, or free, from end to end, and so that at both ends of as many pieces of the edge as can be the same takes the
    /// ground.
    /// </summary>
    /// <param name="test">The test.</param>
    /// <param name="takerAt">What takes the ground beyond a crossing.</param>
    /// <returns>For each run the number of the first that it is joined with.</returns>
    public int[] Groups(IPlaceTest test, Func<int, int> takerAt)
    {
        if (taken.Count is < 2 or > MostWeighed)
        {
            return [.. Enumerable.Range(0, taken.Count)];
        }

        var ways = new List<(bool IsTaken, int One, int Other, bool IsJoined)>();
        for (var one = 0; one < taken.Count; one++)
        {
            for (var other = one + 1; other < taken.Count; other++)
            {
                ways.Add((true, one, other, Reaches(taken[one], taken[other], test) || Reaches(taken[other], taken[one], test) || AreJoined(taken[one], taken[other], test, isTaken: true)));
                ways.Add((false, one, other, AreJoined(free[one], free[other], test, isTaken: false)));
            }
        }

        return Groupings(taken.Count).MaxBy(groups =>
            ways.Sum(way => (way.IsTaken ? groups[way.One] == groups[way.Other] : !AreParted(groups, way.One, way.Other)) == way.IsJoined ? WayWeight : 0)
            + Enumerable.Range(0, groups.Length).Count(run => takerAt(Start(run)) == takerAt(End(Before(groups, run)))))!;
    }

    /// <summary>The run before one, going round, that is joined to it; itself where none is.</summary>
    /// <param name="groups">What <see cref="Groups"/> gave.</param>
    /// <param name="run">The run.</param>
    /// <returns>The run.</returns>
    public static int Before(int[] groups, int run)
    {
        var before = run;
        do
        {
            before = (before + groups.Length - 1) % groups.Length;
        }
        while (groups[before] != groups[run]);

        return before;
    }

    /// <summary>All ways to join so many runs so that none is joined across what joins others; each group has the number of its first run.</summary>
    private static IEnumerable<int[]> Groupings(int count)
    {
        var groups = new int[count];
        return Further(1);

        IEnumerable<int[]> Further(int run)
        {
            if (run == count)
            {
                if (!IsTangled(groups))
                {
                    yield return [.. groups];
                }

                yield break;
            }

            foreach (var group in groups.Take(run).Distinct().Append(run).ToList())
            {
                groups[run] = group;
                foreach (var whole in Further(run + 1))
                {
                    yield return whole;
                }
            }
        }
    }

    private static bool IsTangled(int[] groups)
    {
        for (var one = 0; one < groups.Length; one++)
        {
            for (var inner = one + 1; inner < groups.Length; inner++)
            {
                for (var other = inner + 1; other < groups.Length && groups[inner] != groups[one]; other++)
                {
                    if (groups[other] == groups[one] && Array.LastIndexOf(groups, groups[inner]) > other)
                    {
                        return true;
                    }
                }
            }
        }

        return false;
    }

    /// <summary>Whether runs that are joined part two free ones.</summary>
    private static bool AreParted(int[] groups, int one, int other)
    {
        for (var inner = one; inner < other; inner++)
        {
            for (var outer = other; outer < one + groups.Length; outer++)
            {
                if (groups[inner] == groups[outer % groups.Length])
                {
                    return true;
                }
            }
        }

        return false;
    }

    private List<int> Run(int first, int step)
    {
        var run = new List<int>();
        for (var place = first; run.Count < places.Count && places[place].Taker == 0 == (places[first].Taker == 0); place = (place + step) % places.Count)
        {
            run.Add(place);
        }

        return run;
    }

    /// <summary>Whether what takes a place of one run seems to take one of another too, and takes what lies between: as a narrow strip that runs into something wider.</summary>
    private bool Reaches(List<int> one, List<int> other, IPlaceTest test)
    {
        foreach (var (from, taker, _) in one.Select(place => places[place]).DistinctBy(place => place.Taker))
        {
            foreach (var to in Points(other, NarrowParts))
            {
                if (test.IsLikelyTaken(taker, to) is true && test.IsLikelyTaken(taker, GroundOutline.Between(from, to, 0.5)) is true && !test.IsFree(GroundOutline.Between(from, to, 0.5)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Whether a straight way leads from one run to another that seems to be like both all along, and is halfway.</summary>
    private bool AreJoined(List<int> one, List<int> other, IPlaceTest test, bool isTaken)
    {
        foreach (var from in Points(one, Parts))
        {
            foreach (var to in Points(other, Parts))
            {
                if (IsSo(0.5) && IsSo(0.25) && IsSo(0.75) && test.IsFree(GroundOutline.Between(from, to, 0.5)) != isTaken)
                {
                    return true;
                }

                bool IsSo(double share) => IsLikelyTaken(GroundOutline.Between(from, to, share), test) == isTaken;
            }
        }

        return false;
    }

    /// <summary>The places of a run, and some between them along the sides.</summary>
    private IEnumerable<PlanPoint> Points(List<int> run, int parts)
    {
        for (var index = 0; index < run.Count; index++)
        {
            yield return places[run[index]].Place;
            for (var part = 1; part < parts && index > 0; part++)
            {
                yield return GroundOutline.Between(places[run[index - 1]].Place, places[run[index]].Place, part / (double)parts);
            }
        }
    }

    /// <summary>Whether one of the things that take places round the square seems to take a place; tested where that cannot be told.</summary>
    private bool IsLikelyTaken(PlanPoint place, IPlaceTest test)
    {
        var isKnown = true;
        foreach (var taker in takers)
        {
            var isTaken = test.IsLikelyTaken(taker, place);
            if (isTaken is true)
            {
                return true;
            }

            isKnown &= isTaken is not null;
        }

        return !isKnown && !test.IsFree(place);
    }
}
