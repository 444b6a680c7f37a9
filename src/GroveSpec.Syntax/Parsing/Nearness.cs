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
            if (candidate.Length == 0 || Math.Abs(candidate.Length - lower.Length) > bound)
            {
                continue;
            }

            var distance = Distance(lower, candidate);
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

    /// <summary>How many letters must be put in, taken out, changed or swapped with their neighbour.</summary>
    private static int Distance(ReadOnlySpan<char> left, ReadOnlySpan<char> right)
    {
        Span<int> before = stackalloc int[right.Length + 1];
        Span<int> last = stackalloc int[right.Length + 1];
        Span<int> current = stackalloc int[right.Length + 1];
        for (var column = 0; column <= right.Length; column++)
        {
            last[column] = column;
        }

        for (var row = 1; row <= left.Length; row++)
        {
            current[0] = row;
            for (var column = 1; column <= right.Length; column++)
            {
                var change = left[row - 1] == right[column - 1] ? 0 : 1;
                var least = Math.Min(Math.Min(last[column] + 1, current[column - 1] + 1), last[column - 1] + change);
                if (row > 1 && column > 1 && left[row - 1] == right[column - 2] && left[row - 2] == right[column - 1])
                {
                    least = Math.Min(least, before[column - 2] + 1);
                }

                current[column] = least;
            }

            last.CopyTo(before);
            current.CopyTo(last);
        }

        return last[right.Length];
    }
}
