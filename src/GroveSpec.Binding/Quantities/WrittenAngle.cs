using System.Globalization;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Binding.Quantities;

/// <summary>Reads an angle that stands alone: behind an option of a command, or in a field of the editor.</summary>
public static class WrittenAngle
{
    private const int LongestNumber = 10;

    /// <summary>Reads an angle above zero.</summary>
    /// <param name="written">Such as 10, 10deg or "7.5 deg"; blanks about it do not count.</param>
    /// <param name="mostDegrees">The largest that may be meant.</param>
    /// <returns>The angle; null for what is no angle, for zero, and for more than may be meant.</returns>
    public static Angle? Read(string written, double mostDegrees)
    {
        ArgumentNullException.ThrowIfNull(written);
        var text = written.Trim();
        var number = text.EndsWith("deg", StringComparison.Ordinal) ? text[..^3].TrimEnd() : text;
        return number.Length is > 0 and <= LongestNumber && number.All(letter => char.IsAsciiDigit(letter) || letter == '.')
            && double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees) && degrees > 0 && degrees <= mostDegrees
            ? new Angle(degrees)
            : null;
    }
}
