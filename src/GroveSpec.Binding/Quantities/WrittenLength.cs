using System.Globalization;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Binding.Quantities;

/// <summary>Reads a length that stands alone: behind an option of a command, or in a field of the editor.</summary>
public static class WrittenLength
{
    /// <summary>The shortest length that is read, in words: no tape tells a shorter one.</summary>
    public const string Shortest = "0.01 mm";

    private const int LongestNumber = 15;
    private const decimal ShortestInNanometres = 10_000;

    /// <summary>Reads a length.</summary>
    /// <param name="written">Such as 18mm, "18 mm" or 0.7in; blanks about it do not count.</param>
    /// <param name="units">What a bare number is in: millimetres, or inches.</param>
    /// <returns>The length; null for what is no length, for what is shorter than <see cref="Shortest"/>, and for what is longer than <see cref="Length.Largest"/>.</returns>
    public static Length? Read(string written, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(written);
        var text = written.Trim();
        var end = text.Length;
        while (end > 0 && char.IsAsciiLetter(text[end - 1]))
        {
            end--;
        }

        var number = text[..end].TrimEnd();
        var unit = UnitTable.Exact(end < text.Length ? text[end..] : units == UnitSystem.Inch ? "in" : "mm");
        return number.Length is > 0 and <= LongestNumber && number.All(letter => char.IsAsciiDigit(letter) || letter == '.')
            && decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount)
            && unit is { } known && UnitTable.KindOf(known) == QuantityKind.Length
            && amount * UnitTable.Nanometres(known) is >= ShortestInNanometres and var length && length <= Length.Largest.Nanometres
            ? new Length((long)Math.Round(length))
            : null;
    }
}
