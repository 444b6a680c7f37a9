using GroveSpec.Model.States;

namespace GroveSpec.Checks.Judging;

/// <summary>Of very many candidates only the worst are made into findings, the accepted ones besides; the rest are counted.</summary>
internal static class WorstFirst
{
    /// <summary>Enough for the five that are told and some that fall away since another check tells the same.</summary>
    private const int Enough = 40;

    /// <summary>Makes findings of candidates.</summary>
    /// <typeparam name="T">What a rule holds of one.</typeparam>
    /// <param name="context">The planting.</param>
    /// <param name="check">The check.</param>
    /// <param name="candidates">All that the rule found.</param>
    /// <param name="weight">How bad a candidate is, the larger the worse.</param>
    /// <param name="trunks">The trunks a candidate is about.</param>
    /// <param name="make">Makes the finding.</param>
    /// <returns>The findings, with what was left out counted on the last.</returns>
    public static List<Finding> Make<T>(CheckContext context, CheckDescription check, List<T> candidates, Func<T, double> weight, Func<T, IReadOnlyList<TrunkState>> trunks, Func<T, Finding> make)
    {
        var findings = new List<Finding>();
        if (candidates.Count <= Enough)
        {
            foreach (var candidate in candidates)
            {
                findings.Add(make(candidate) with { Weight = weight(candidate) });
            }

            return findings;
        }

        var weights = new double[candidates.Count];
        var order = new int[candidates.Count];
        for (var index = 0; index < order.Length; index++)
        {
            weights[index] = -weight(candidates[index]);
            order[index] = index;
        }

        Array.Sort(order, (left, right) => weights[left] != weights[right] ? weights[left].CompareTo(weights[right]) : left.CompareTo(right));
        var acceptances = Acceptances.KeysOf(context, check);
        var leftOut = 0;
        for (var rank = 0; rank < order.Length; rank++)
        {
            var candidate = candidates[order[rank]];
            if (rank < Enough || (acceptances.Count > 0 && acceptances.Contains(Acceptances.Key(check.Name, trunks(candidate).Select(trunk => trunk.Name)))))
            {
                findings.Add(make(candidate) with { Weight = -weights[order[rank]] });
            }
            else
            {
                leftOut++;
            }
        }

        if (leftOut > 0)
        {
            findings[Enough - 1] = findings[Enough - 1] with { Untold = leftOut };
        }

        return findings;
    }
}
