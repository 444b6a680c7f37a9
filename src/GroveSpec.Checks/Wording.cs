using System.Text;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks;

/// <summary>Puts names into sentences.</summary>
public static class Wording
{
    /// <summary>Names in a row: "A", "A and B", "A, B and C"; of many, the first few and how many more.</summary>
    /// <param name="names">The names.</param>
    /// <param name="most">How many are named at most.</param>
    /// <returns>The names as part of a sentence.</returns>
    internal static string List(IReadOnlyList<string> names, int most = 6)
    {
        var shown = Math.Min(names.Count, most);
        var text = new StringBuilder();
        for (var index = 0; index < shown; index++)
        {
            text.Append(index == 0 ? "" : index == names.Count - 1 ? " and " : ", ").Append(Name(names[index]));
        }

        return shown < names.Count ? text.Append(" and ").Append(names.Count - shown).Append(" more").ToString() : text.ToString();
    }

    /// <summary>Names in the order in which a grower counts: T2 before T10.</summary>
    /// <param name="names">The names.</param>
    /// <returns>The names in that order.</returns>
    public static string[] Sorted(IEnumerable<string> names) => [.. names.Order(NaturalOrder.Instance)];

    /// <summary>Names in a row, uncut: "A", "A and B", "A, B and C"; of many, the first few and how many more.</summary>
    /// <param name="names">At least one name, as the file writes it; how it is kept harmless is for who shows it.</param>
    /// <param name="most">How many are named at most, from 1.</param>
    /// <returns>The names as part of a sentence.</returns>
    public static string Row(IReadOnlyList<string> names, int most = 12)
    {
        ArgumentNullException.ThrowIfNull(names);
        return names.Count == 1 ? names[0]
            : names.Count > most ? $"{string.Join(", ", names.Take(most))} and {names.Count - most} more"
            : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";
    }

    /// <summary>A part in percent.</summary>
    /// <param name="percent">The part.</param>
    /// <returns>Such as "2.4 %", or "under 0.1 %" for less than can be shown.</returns>
    internal static string Percent(double percent) => percent is > 0 and < 0.05 ? "under 0.1 %" : LengthWording.Say(percent, percent < 9.95 ? 1 : 0) + " %";

    /// <summary>A whole number with its ending.</summary>
    /// <param name="number">From 1.</param>
    /// <returns>Such as "2nd".</returns>
    internal static string Ordinal(int number) => number + ((number % 100) is >= 11 and <= 13 ? "th" : (number % 10) switch
    {
        1 => "st",
        2 => "nd",
        3 => "rd",
        _ => "th",
    });

    /// <summary>A direction in the plan as a grower points it out.</summary>
    /// <param name="bearing">The bearing.</param>
    /// <returns>The nearest of eight, such as "to the back left".</returns>
    internal static string Toward(Bearing bearing) => (int)Math.Round(bearing.Degrees / 45) switch
    {
        1 => "to the back right",
        2 => "to the right",
        3 => "to the front right",
        4 => "to the front",
        5 => "to the front left",
        6 => "to the left",
        7 => "to the back left",
        _ => "to the back",
    };

    /// <summary>Findings by their checks, in the order in which they are told.</summary>
    /// <param name="findings">The findings; the untold are counted.</param>
    /// <returns>Such as "three-in-line 2 times, even-gaps"; empty for none.</returns>
    internal static string Kinds(IEnumerable<Finding> findings) => string.Join(", ", findings
        .GroupBy(finding => finding.Check.Name, StringComparer.Ordinal)
        .Select(kind => kind.Sum(finding => 1 + finding.Untold) is > 1 and var number ? $"{kind.Key} {number} times" : kind.Key));

    /// <summary>A name, cut where it is too long for a sentence.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The name itself, or its beginning and an ellipsis.</returns>
    internal static string Name(string name) => ShortText.Of(name);
}
