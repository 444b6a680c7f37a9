namespace GroveSpec.Binding.Names;

/// <summary>Finds the word that was most likely meant.</summary>
internal static class NearWord
{
    /// <summary>Words longer than this are not compared: nobody misspells one letter of them by hand.</summary>
    private const int LongestCompared = 64;

    /// <summary>The known word nearest to a written one by letters put in, left out, changed or swapped with a neighbour.</summary>
    /// <param name="written">The word as written.</param>
    /// <param name="known">The words that would be right.</param>
    /// <returns>The nearest, the first of several as near; null where none is near enough: a third of the letters may differ, and of one or two letters only their case.</returns>
    public static string? Of(string written, IEnumerable<string> known)
    {
        if (written.Length is 0 or > LongestCompared)
        {
            return null;
        }

        string? nearest = null;
        var least = (written.Length <= 2 ? 0 : Math.Max(1, written.Length / 3)) + 1;
        var folded = written.ToLowerInvariant();
        foreach (var word in known)
        {
            if (word.Length > LongestCompared || Math.Abs(word.Length - written.Length) >= least)
            {
                continue;
            }

            var distance = Distance(folded, word.ToLowerInvariant(), least);
            if (distance < least)
            {
                least = distance;
                nearest = word;
            }
        }

        return nearest;
    }

    /// <summary>Optimal string alignment distance (Damerau 1964, with neighbours swapped once).</summary>
    private static int Distance(string left, string right, int enough)
    {
        Span<int> before = stackalloc int[LongestCompared + 1];
        Span<int> above = stackalloc int[LongestCompared + 1];
        Span<int> row = stackalloc int[LongestCompared + 1];
        for (var column = 0; column <= right.Length; column++)
        {
            above[column] = column;
        }

        for (var line = 1; line <= left.Length; line++)
        {
            row[0] = line;
            var best = line;
            for (var column = 1; column <= right.Length; column++)
            {
                var change = left[line - 1] == right[column - 1] ? 0 : 1;
                var cost = Math.Min(Math.Min(above[column] + 1, row[column - 1] + 1), above[column - 1] + change);
                if (line > 1 && column > 1 && left[line - 1] == right[column - 2] && left[line - 2] == right[column - 1])
                {
                    cost = Math.Min(cost, before[column - 2] + 1);
                }

                row[column] = cost;
                best = Math.Min(best, cost);
            }

            if (best >= enough)
            {
                return enough;
            }

            var spare = before;
            before = above;
            above = row;
            row = spare;
        }

        return above[right.Length];
    }
}
