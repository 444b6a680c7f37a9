using System.Globalization;
using System.Text;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Tells what is wrong with a number that is not written in plain decimal digits, and what would be right.</summary>
internal static class OddNumber
{
    private const int LongestQuoted = 40;

    /// <summary>The sentence and, where it is clear, the number that was meant.</summary>
    public static (string Message, string? Replacement) Describe(string text)
    {
        var shown = Shorten(text);
        if (InPlainDigits(text) is { } plain && plain != text)
        {
            return ($"\"{shown}\" is not written in the digits 0 to 9; write {Shorten(plain)}.", plain);
        }

        if (AsDate(text) is { } date)
        {
            return ($"A day is written year-month-day; write {date} for \"{shown}\".", date);
        }

        if (LooksLikeDate(text))
        {
            return ($"\"{shown}\" is no number and no day; a day is written year-month-day, such as 2027-04-22.", null);
        }

        if (text.StartsWith('+') && IsPlain(text[1..]))
        {
            return ($"A number needs no plus sign; write {Shorten(text[1..])} for \"{shown}\".", text[1..]);
        }

        var unsigned = text.StartsWith('-') ? text[1..] : text;
        if (unsigned.StartsWith('.') && IsPlain("0" + unsigned))
        {
            var full = (text.StartsWith('-') ? "-0" : "0") + unsigned;
            return ($"A number begins with a digit; write {Shorten(full)} for \"{shown}\".", full);
        }

        if (unsigned.EndsWith('.') && IsPlain(unsigned[..^1]))
        {
            return ($"A number ends with a digit; write {Shorten(text[..^1])} for \"{shown}\".", text[..^1]);
        }

        if (text.Contains('/', StringComparison.Ordinal))
        {
            var value = AsFraction(text);
            return value is null
                ? ($"\"{shown}\" is a fraction; write it as a decimal number such as 0.5.", null)
                : ($"\"{shown}\" is a fraction; write it as a decimal number, {value}.", value);
        }

        return ($"\"{shown}\" is not a plain decimal number; write it with the digits 0 to 9 and at most one point, such as 12.5.", null);
    }

    /// <summary>Whether a text is digits with at most one point among them, and perhaps a sign.</summary>
    public static bool IsPlain(string text)
    {
        var index = text.StartsWith('-') ? 1 : 0;
        var digits = 0;
        var points = 0;
        for (; index < text.Length; index++)
        {
            if (char.IsAsciiDigit(text[index]))
            {
                digits++;
            }
            else if (text[index] == '.' && digits > 0 && index + 1 < text.Length)
            {
                points++;
            }
            else
            {
                return false;
            }
        }

        return digits > 0 && points <= 1;
    }

    private static string? InPlainDigits(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) == UnicodeCategory.DecimalDigitNumber)
            {
                plain.Append((int)Rune.GetNumericValue(rune));
            }
            else if (rune.Value is 0x2212 or 0x2013)
            {
                plain.Append('-');
            }
            else
            {
                plain.Append(rune.Value == 0x066B ? "." : rune.ToString());
            }
        }

        var result = plain.ToString();
        return IsPlain(result) ? result : null;
    }

    private static string? AsDate(string text)
    {
        var parts = text.Split('-', '/', '.');
        return parts.Length == 3 && parts[0].Length == 4 && Array.TrueForAll(parts, IsDigits)
            && parts[1].Length <= 2 && parts[2].Length <= 2
            ? $"{parts[0]}-{parts[1].PadLeft(2, '0')}-{parts[2].PadLeft(2, '0')}"
            : null;
    }

    private static bool LooksLikeDate(string text)
    {
        var parts = text.Split('-', '/', '.');
        return parts.Length is 2 or 3 && Array.TrueForAll(parts, IsDigits) && (text.Contains('-', StringComparison.Ordinal) || parts[^1].Length == 4);
    }

    private static bool IsDigits(string text) => text.Length is > 0 and <= 10 && text.All(char.IsAsciiDigit);

    private static string? AsFraction(string text)
    {
        var parts = text.Split('/');
        return parts.Length == 2 && IsPlain(parts[0]) && IsPlain(parts[1])
            && decimal.TryParse(parts[0], NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var above)
            && decimal.TryParse(parts[1], NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var below)
            && below >= 0.001m && Math.Abs(above) < 1_000_000m
            ? Math.Round(above / below, 4).ToString("0.####", CultureInfo.InvariantCulture)
            : null;
    }

    private static string Shorten(string text) => text.Length <= LongestQuoted ? text : string.Concat(text.AsSpan(0, LongestQuoted), "…");
}
