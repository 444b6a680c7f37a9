namespace GroveSpec.Cli.Arguments;

/// <summary>Finds the word that someone may have meant.</summary>
internal static class NearWord
{
    /// <summary>The longest word that is looked at; a longer one is no slip of the finger.</summary>
    private const int Longest = 32;

    /// <summary>Finds the nearest word.</summary>
    /// <param name="written">What was written.</param>
    /// <param name="known">What could be meant.</param>
    /// <returns>The nearest word that differs in at most a third of its letters, the first of several; null where none is near.</returns>
    public static string? Find(string written, IEnumerable<string> known)
    {
        string? nearest = null;
        var least = int.MaxValue;
        foreach (var word in known)
        {
            if (written.Length <= Longest && Distance(written, word) is var distance && distance <= Math.Max(1, word.Length / 3) && distance < least)
            {
                nearest = word;
                least = distance;
            }
        }

        return nearest;
    }

    /// <summary>The number of letters to put in, take out, change or swap with their neighbour (optimal string alignment).</summary>
    private static int Distance(string left, string right)
    {
        var table = new int[left.Length + 1, right.Length + 1];
        for (var row = 0; row <= left.Length; row++)
        {
            for (var column = 0; column <= right.Length; column++)
            {
                if (row == 0 || column == 0)
                {
                    table[row, column] = row + column;
                    continue;
                }

                var change = left[row - 1] == right[column - 1] ? 0 : 1;
                var best = Math.Min(Math.Min(table[row - 1, column], table[row, column - 1]) + 1, table[row - 1, column - 1] + change);
                if (row > 1 && column > 1 && left[row - 1] == right[column - 2] && left[row - 2] == right[column - 1])
                {
                    best = Math.Min(best, table[row - 2, column - 2] + 1);
                }

                table[row, column] = best;
            }
        }

        return table[left.Length, right.Length];
    }
}
