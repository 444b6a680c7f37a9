using System.Globalization;

namespace GroveSpec.Binding.Quantities;

/// <summary>Reads a whole number or a range of them that stands alone: behind an option of a command, or in a field of the editor.</summary>
public static class WrittenRange
{
    private const int LongestNumber = 4;

    /// <summary>Reads whole numbers from 1 on.</summary>
    /// <param name="written">Such as 5, 5-7 or 5–7; blanks about the numbers do not count.</param>
    /// <param name="most">The largest that may be meant.</param>
    /// <returns>The least and the most, the same for one number; null for what is neither, for zero, for more than may be meant, and where the first is larger than the second.</returns>
    public static (int Least, int Most)? Read(string written, int most)
    {
        ArgumentNullException.ThrowIfNull(written);
        var ends = written.Split('-', '–');
        return ends.Length <= 2 && Whole(ends[0]) is { } first && Whole(ends[^1]) is { } last && first <= last && last <= most ? (first, last) : null;
    }

    private static int? Whole(string text)
    {
        var trimmed = text.Trim();
        return trimmed.Length is > 0 and <= LongestNumber && trimmed.All(char.IsAsciiDigit) && int.Parse(trimmed, CultureInfo.InvariantCulture) is > 0 and var number ? number : null;
    }
}
