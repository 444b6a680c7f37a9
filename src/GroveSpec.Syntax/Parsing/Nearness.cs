using GroveSpec.Syntax.Text;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Finds the word that a misspelt one was meant to be.</summary>
internal static class Nearness
{
    private const int LongestCompared = 24;

    /// <summary>The one word that is near enough.</summary>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The words it could be.</param>
    /// <returns>The nearest; null when none is near, or when two are as near.</returns>
    public static string? Nearest(ReadOnlySpan<char> word, IEnumerable<string> known)
    {
        if (word.Length > LongestCompared)
        {
            return null;
        }

        Span<char> lower = stackalloc char[word.Length];
        word.ToLowerInvariant(lower);
        string? best = null;
        var bestDistance = int.MaxValue;
        var isTied = false;
        foreach (var candidate in known)
        {
            var bound = Math.Min(Allowed(lower.Length), Allowed(candidate.Length));
            var distance = WordDistance.Between(lower, candidate, Math.Min(bound, bestDistance) + 1);
            if (distance > bound || distance > bestDistance)
            {
                continue;
            }

            isTied = distance == bestDistance && candidate != best;
            best = candidate;
            bestDistance = distance;
        }

        return isTied ? null : best;
    }

    /// <summary>How many letters may be wrong in a word of so many; a short word has too many neighbours to guess at.</summary>
    private static int Allowed(int length) => length switch
    {
        <= 2 => 0,
        <= 5 => 1,
        <= 9 => 2,
        _ => 3,
    };
}
