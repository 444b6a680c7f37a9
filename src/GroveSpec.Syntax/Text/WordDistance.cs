namespace GroveSpec.Syntax.Text;

/// <summary>How far a written word is from one that may have been meant. How far is still near is for whoever asks to say.</summary>
public static class WordDistance
{
    private const int LongestOnStack = 64;

    /// <summary>
    /// How many letters must be put in, left out, changed or swapped with their neighbour to make one word of the other:
    /// the optimal string alignment distance (Damerau 1964, no letter touched twice).
    /// </summary>
    /// <param name="left">One word. Its letters are compared as they stand, capitals and all.</param>
    /// <param name="right">The other.</param>
    /// <param name="enough">The distance from which on it does not matter any more; at least 1.</param>
    /// <returns>The distance, or <paramref name="enough"/> where it is that or more. The same when the words change places.</returns>
    public static int Between(ReadOnlySpan<char> left, ReadOnlySpan<char> right, int enough)
    {
        if (right.Length > left.Length)
        {
            var spare = left;
            left = right;
            right = spare;
        }

        if (left.Length - right.Length >= enough)
        {
            return enough;
        }

        var width = right.Length + 1;
        Span<int> rows = right.Length <= LongestOnStack ? stackalloc int[3 * (LongestOnStack + 1)] : new int[3 * width];
        var before = rows[..width];
        var above = rows.Slice(width, width);
        var row = rows.Slice(2 * width, width);
        for (var column = 0; column < width; column++)
        {
            above[column] = column;
        }

        for (var line = 1; line <= left.Length; line++)
        {
            row[0] = line;
            var least = line;
            for (var column = 1; column < width; column++)
            {
                var change = left[line - 1] == right[column - 1] ? 0 : 1;
                var cost = Math.Min(Math.Min(above[column], row[column - 1]) + 1, above[column - 1] + change);
                if (line > 1 && column > 1 && left[line - 1] == right[column - 2] && left[line - 2] == right[column - 1])
                {
                    cost = Math.Min(cost, before[column - 2] + 1);
                }

                row[column] = cost;
                least = Math.Min(least, cost);
            }

            // No later row can come below: even a swap costs one more than the row above this one, whose least is at most one less.
            if (least >= enough)
            {
                return enough;
            }

            var oldest = before;
            before = above;
            above = row;
            row = oldest;
        }

        return Math.Min(above[right.Length], enough);
    }
}
