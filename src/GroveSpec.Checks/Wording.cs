using System.Text;

namespace GroveSpec.Checks;

/// <summary>Puts names into sentences.</summary>
internal static class Wording
{
    private const int LongestName = 40;

    /// <summary>Names in a row: "A", "A and B", "A, B and C"; of many, the first few and how many more.</summary>
    /// <param name="names">The names.</param>
    /// <param name="most">How many are named at most.</param>
    /// <returns>The names as part of a sentence.</returns>
    public static string List(IReadOnlyList<string> names, int most = 6)
    {
        var shown = Math.Min(names.Count, most);
        var text = new StringBuilder();
        for (var index = 0; index < shown; index++)
        {
            text.Append(index == 0 ? "" : index == names.Count - 1 ? " and " : ", ").Append(Name(names[index]));
        }

        return shown < names.Count ? text.Append(" and ").Append(names.Count - shown).Append(" more").ToString() : text.ToString();
    }

    /// <summary>A name, cut where it is too long for a sentence.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The name itself, or its beginning and an ellipsis.</returns>
    public static string Name(string name)
    {
        if (name.Length <= LongestName)
        {
            return name;
        }

        var end = char.IsHighSurrogate(name[LongestName - 1]) ? LongestName - 1 : LongestName;
        return string.Concat(name.AsSpan(0, end), "…");
    }
}
