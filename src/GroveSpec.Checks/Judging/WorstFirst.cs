using GroveSpec.Model.States;

namespace GroveSpec.Checks.Judging;

/// <summary>
/// What another check has told is left out; of very many candidates only the worst are made into findings, the accepted
/// ones besides; the rest are counted.
/// </summary>
internal static class WorstFirst
{
    /// <summary>More than are ever told of a large planting.</summary>
    private const int Enough = 40;

    /// <summary>Makes findings of candidates.</summary>
    /// <typeparam name="T">What a rule holds of one.</typeparam>
    /// <param name="context">The planting.</param>
    /// <param name="check">The check.</param>
    /// <param name="candidates">All that the rule found.</param>
    /// <param name="weight">How bad a candidate is, the larger the worse.</param>
    /// <param name="trunks">The trunks a candidate is about.</param>
    /// <param name="make">Makes the finding.</param>
    /// <returns>The findings, with what was left out counted on one of them that the file does not accept.</returns>
    public static List<Finding> Make<T>(CheckContext context, CheckDescription check, IReadOnlyList<T> candidates, Func<T, double> weight, Func<T, IReadOnlyList<TrunkState>> trunks, Func<T, Finding> make)
    {
        if (context.Facts.MayBeTold(check))
        {
            candidates = Those(candidates, candidate => !context.Facts.IsTold(check, trunks(candidate)));
        }

        if (OneFactOnce.IsKept(check))
        {
            foreach (var candidate in candidates)
            {
                context.Facts.Keep(check, trunks(candidate));
            }
        }

        var findings = new List<Finding>();
        var enough = context.MakesAll ? int.MaxValue : Enough;
        if (candidates.Count > enough && Acceptances.KeysOf(context, check) is { Count: > 0 } keys)
        {
            var rest = Those(candidates, candidate => !keys.Contains(Acceptances.Key(check.Name, trunks(candidate).Select(trunk => trunk.Name))));
            foreach (var candidate in candidates.Except(rest))
            {
                findings.Add(make(candidate) with { Weight = weight(candidate) });
            }

            candidates = rest;
        }

        var worst = candidates.Count > enough ? Worst(candidates, weight, trunks) : candidates;
        foreach (var candidate in worst)
        {
            findings.Add(make(candidate) with { Weight = weight(candidate) });
        }

        if (worst.Count < candidates.Count)
        {
            findings[^1] = findings[^1] with { Untold = candidates.Count - worst.Count };
        }

        return findings;
    }

    private static List<T> Those<T>(IReadOnlyList<T> candidates, Predicate<T> holds)
    {
        var kept = new List<T>();
        for (var index = 0; index < candidates.Count; index++)
        {
            if (holds(candidates[index]))
            {
                kept.Add(candidates[index]);
            }
        }

        return kept;
    }

    /// <summary>The worst; of those as bad as each other the first by the names of their trunks.</summary>
    private static List<T> Worst<T>(IReadOnlyList<T> candidates, Func<T, double> weight, Func<T, IReadOnlyList<TrunkState>> trunks)
    {
        var weights = new double[candidates.Count];
        for (var index = 0; index < weights.Length; index++)
        {
            weights[index] = weight(candidates[index]);
        }

        var sorted = (double[])weights.Clone();
        Array.Sort(sorted);
        var least = sorted[^Enough];
        var worst = new List<T>(Enough);
        var equals = new List<(string[] Names, int Candidate)>(Enough + 1);
        for (var index = 0; index < weights.Length; index++)
        {
            if (weights[index] > least)
            {
                worst.Add(candidates[index]);
            }
        }

        // Only the few names that are needed are kept, and most others are found wanting at the first of theirs.
        var open = Enough - worst.Count;
        for (var index = 0; index < weights.Length; index++)
        {
            if (weights[index] == least)
            {
                Offer(equals, (Names(trunks(candidates[index])), index), open);
            }
        }

        foreach (var (_, candidate) in equals)
        {
            worst.Add(candidates[candidate]);
        }

        return worst;
    }

    private static void Offer(List<(string[] Names, int Candidate)> first, (string[] Names, int Candidate) offered, int most)
    {
        var place = first.Count;
        while (place > 0 && Ranking.CompareNames(offered.Names, first[place - 1].Names) < 0)
        {
            place--;
        }

        if (place < most)
        {
            first.Insert(place, offered);
            if (first.Count > most)
            {
                first.RemoveAt(most);
            }
        }
    }

    private static string[] Names(IReadOnlyList<TrunkState> trunks)
    {
        var names = new string[trunks.Count];
        for (var index = 0; index < names.Length; index++)
        {
            names[index] = trunks[index].Name;
        }

        Array.Sort(names, StringComparer.Ordinal);
        return names;
    }
}
