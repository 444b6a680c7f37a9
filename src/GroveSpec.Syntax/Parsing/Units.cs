namespace GroveSpec.Syntax.Parsing;

/// <summary>The units of quantities, as far as reading has to know them.</summary>
public static class Units
{
    // Shorter ones are more likely a unit that the language does not have.
    private const int ShortestGuessed = 4;

    /// <summary>
    /// Whether a word behind a number is no unit but a misspelt word of the language, as in <c>height 12 diametr 3</c>.
    /// </summary>
    internal static bool IsMisspeltWord(ReadOnlySpan<char> word) => word.Length >= ShortestGuessed && !IsUnit(word) && !KnownWords.Has(KnownWords.Months, word.ToString()) && Nearness.Nearest(word, WordsOfLanguage()) is not null;

    /// <summary>The units of lengths.</summary>
    public static IReadOnlyList<string> Lengths => ["mm", "cm", "m", "in", "ft"];

    /// <summary>The units of spans of time.</summary>
    public static IReadOnlyList<string> Times => ["days", "weeks", "months", "years"];

    /// <summary>The units of temperatures.</summary>
    public static IReadOnlyList<string> Temperatures => ["C", "F"];

    /// <summary>Whether a word is a unit of the language.</summary>
    /// <param name="word">The word as written.</param>
    /// <returns>True for a unit; its letters must be small or large as the language has them.</returns>
    public static bool IsUnit(ReadOnlySpan<char> word) => word switch
    {
        "mm" or "cm" or "m" or "in" or "ft" or "deg" or "%" or "C" or "F"
            or "day" or "days" or "week" or "weeks" or "month" or "months" or "year" or "years" => true,
        _ => false,
    };

    private static IEnumerable<string> WordsOfLanguage()
    {
        for (var type = 1; type <= Vocabulary.LastWord; type++)
        {
            yield return Vocabulary.TextOf(type);
        }
    }
}
