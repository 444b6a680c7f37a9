using NodaTime;

namespace GroveSpec.Binding.Quantities;

/// <summary>Reads a day that stands alone: behind an option of a command, or in a field of the editor.</summary>
public static class WrittenDay
{
    /// <summary>Reads a day of the calendar.</summary>
    /// <param name="written">Such as 2027-05-31, and nothing about it.</param>
    /// <returns>The day; null for what is none, and for what lies before the year 1.</returns>
    public static LocalDate? Read(string written)
    {
        ArgumentNullException.ThrowIfNull(written);
        return written.Length == 10 && written[4] == '-' && written[7] == '-'
            && Digits(written.AsSpan(0, 4)) is var year and >= 1
            && Digits(written.AsSpan(5, 2)) is var month and >= 1 and <= 12
            && Digits(written.AsSpan(8, 2)) is var day && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month)
            ? new LocalDate(year, month, day)
            : null;
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        var value = 0;
        foreach (var digit in text)
        {
            if (!char.IsAsciiDigit(digit))
            {
                return -1;
            }

            value = (value * 10) + (digit - '0');
        }

        return value;
    }
}
