using GroveSpec.Syntax.Text;

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
        if (written.Length > Longest)
        {
            return null;
        }

        string? nearest = null;
        var least = int.MaxValue;
        foreach (var word in known)
        {
            var enough = Math.Min(Math.Max(1, word.Length / 3) + 1, least);
            if (WordDistance.Between(written, word, enough) is var distance && distance < enough)
            {
                nearest = word;
                least = distance;
            }
        }

        return nearest;
    }
}
