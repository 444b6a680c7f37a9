using GroveSpec.Syntax.Text;

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
            if (Math.Abs(word.Length - written.Length) >= least)
            {
                continue;
            }

            var distance = WordDistance.Between(folded, word.ToLowerInvariant(), least);
            if (distance < least)
            {
                least = distance;
                nearest = word;
            }
        }

        return nearest;
    }
}
