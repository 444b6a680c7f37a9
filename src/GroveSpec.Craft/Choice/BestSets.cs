using System.Collections.Immutable;
using System.Numerics;

namespace GroveSpec.Craft.Choice;

/// <summary>
/// The best few of the sets that a search meets: the best of all, then the best of those that are not near it, and so on. It
/// tells the search over which score a set cannot be one of them, and may be told of sets from several threads at once.
/// </summary>
/// <remarks>
/// The limit is the score of the last of the few as they are known by then, and only ever falls. When a better first one comes
/// up, sets may be near that which were not near the old one; the last of the few may then be over the limit, and among those
/// that were passed over. So what is at the limit or below it is sure when all sets were gone through, and for the
/// rest they have to be gone through again.
/// </remarks>
/// <param name="number">How many.</param>
/// <param name="areNear">Whether two sets are so alike that only one of them counts. Every set is near itself.</param>
internal sealed class BestSets(int number, Func<uint, uint, bool> areNear)
{
    /// <summary>Scores that differ by no more are alike.</summary>
    public const double Hair = 1e-9;

    private readonly Lock gate = new();
    private readonly List<(uint Kept, double Score)> sure = [];
    private readonly List<(uint Kept, double Score)> leads = [];
    private List<(uint Kept, double Score)> met = [];
    private double limit = double.PositiveInfinity;

    /// <summary>The score over which, by more than a hair, a set need not be told.</summary>
    public double Limit => Volatile.Read(ref limit);

    /// <summary>Takes in a set.</summary>
    /// <param name="kept">The set; one that was told before changes nothing.</param>
    /// <param name="score">Its score.</param>
    public void Add(uint kept, double score)
    {
        if (score > Limit + Hair)
        {
            return;
        }

        lock (gate)
        {
            if (sure.Any(one => areNear(one.Kept, kept)))
            {
                return;
            }

            met.Add((kept, score));
            var place = 0;
            while (place < leads.Count && leads[place].Score <= score)
            {
                if (areNear(leads[place].Kept, kept))
                {
                    return;
                }

                place++;
            }

            if (sure.Count + place < number)
            {
                Lead(place, (kept, score));
            }
        }
    }

    /// <summary>Tells that all sets were gone through with the limit as it fell.</summary>
    /// <returns>Whether they have to be gone through again, with the limit as it is now.</returns>
    public bool IsUnsettled()
    {
        while (sure.Count < number)
        {
            var least = met.Select(one => one.Score).DefaultIfEmpty(double.PositiveInfinity).Min();
            if (least > limit + Hair || met.Count == 0)
            {
                break;
            }

            var first = met.Where(one => one.Score <= least + Hair).Aggregate((one, other) => IsBefore(other.Kept, one.Kept) ? other : one);
            sure.Add(first);
            met = [.. met.Where(one => !areNear(first.Kept, one.Kept))];
        }

        if (sure.Count == number || double.IsPositiveInfinity(limit))
        {
            return false;
        }

        leads.Clear();
        limit = double.PositiveInfinity;
        if (met.Count > 0)
        {
            Lead(0, met.MinBy(one => one.Score));
        }

        return true;
    }

    /// <summary>Those that are sure, the best first; of sets that score alike within a hair, the one whose first thing that the other lacks comes first.</summary>
    /// <returns>The sets with their scores.</returns>
    public ImmutableArray<(uint Kept, double Score)> Sure() => [.. sure];

    /// <summary>Puts a set in at a place, and finds those anew that come after it.</summary>
    private void Lead(int place, (uint Kept, double Score) first)
    {
        leads.RemoveRange(place, leads.Count - place);
        leads.Add(first);
        while (sure.Count + leads.Count < number && Next() is { } next)
        {
            leads.Add(next);
        }

        if (sure.Count + leads.Count == number)
        {
            Volatile.Write(ref limit, Math.Min(limit, leads[^1].Score));
        }
    }

    private (uint Kept, double Score)? Next()
    {
        (uint Kept, double Score)? best = null;
        foreach (var one in met)
        {
            if ((best is null || one.Score < best.Value.Score) && !leads.Any(lead => areNear(lead.Kept, one.Kept)))
            {
                best = one;
            }
        }

        return best;
    }

    private static bool IsBefore(uint one, uint other) => BitOperations.TrailingZeroCount(one ^ other) is var first && first < 32 && (one >> first & 1) != 0;
}
