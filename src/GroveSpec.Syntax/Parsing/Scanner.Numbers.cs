using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <content>Numbers and dates, and what was meant as one.</content>
internal sealed partial class Scanner
{
    private bool BeginsNumber(int index, int lineEnd)
    {
        var unit = content[index];
        if (char.IsAsciiDigit(unit))
        {
            return true;
        }

        if (unit is '-' or '+' or '.' or '\u2212' or '\u2013')
        {
            var next = index + 1 < lineEnd ? content[index + 1] : ' ';
            return char.IsAsciiDigit(next) || IsForeignDigit(next)
                || (unit != '.' && next == '.' && index + 2 < lineEnd && char.IsAsciiDigit(content[index + 2]));
        }

        return IsForeignDigit(unit);
    }

    private void ScanNumber(int lineEnd)
    {
        var start = position;
        var index = start + (content[start] == '-' ? 1 : 0);
        var digitsStart = index;
        index = EndOfDigits(index, lineEnd);
        var kind = TokenKind.Number;
        var type = Grove.NUMBER;
        var isOdd = index == digitsStart;
        if (index + 1 < lineEnd && content[index] == '.' && char.IsAsciiDigit(content[index + 1]))
        {
            index = EndOfDigits(index + 1, lineEnd);
        }
        else if (index + 1 < lineEnd && content[index] == '-' && char.IsAsciiDigit(content[index + 1]))
        {
            kind = TokenKind.Date;
            type = Grove.DATE;
            index = EndOfDate(index, lineEnd);
            isOdd |= !IsDateShape(content.AsSpan(start, index - start)) || (index < lineEnd && IsWordPart(content[index]));
        }

        if (isOdd || GoesOnOddly(start, index, lineEnd))
        {
            isOdd = true;
            index = EndOfRun(index, lineEnd, static unit => char.IsAsciiLetterOrDigit(unit) || unit is '.' or '/' or '+' or '-' or '_' or '\'' or '\u2212' or '\u2013' or '\u066B' || IsForeignDigit(unit));
        }

        position = index;
        BeginLine(type);
        if (index - start > Limits.WordCharacters)
        {
            isOdd = true;
            TellTooLong(start, index);
        }
        else if (isOdd)
        {
            var (message, replacement) = OddNumber.Describe(content[start..index]);
            problems.Add(SyntaxProblemKind.OddNumber, TextSpan.FromBounds(start, index), message, replacement);
        }

        Add(kind, type | (isOdd ? OddFlag : 0), start);
        lastType = type;
    }

    /// <summary>Whether what follows the digits belongs to them in some other way of writing numbers.</summary>
    private bool GoesOnOddly(int start, int index, int lineEnd)
    {
        if (index >= lineEnd)
        {
            return false;
        }

        var next = content[index];
        if (next is '.' or '/' or '_' or '\'' || IsForeignDigit(next))
        {
            return true;
        }

        var after = index + 1 < lineEnd ? content[index + 1] : ' ';
        if (next is 'e' or 'E')
        {
            return char.IsAsciiDigit(after) || (after is '+' or '-' && index + 2 < lineEnd && char.IsAsciiDigit(content[index + 2]));
        }

        return next is 'x' or 'X' && char.IsAsciiHexDigit(after) && content.AsSpan(start, index - start) is "0" or "-0";
    }

    private int EndOfDigits(int index, int lineEnd)
    {
        while (index < lineEnd && char.IsAsciiDigit(content[index]))
        {
            index++;
        }

        return index;
    }

    private int EndOfDate(int index, int lineEnd)
    {
        for (var part = 0; part < 2 && index + 1 < lineEnd && content[index] == '-' && char.IsAsciiDigit(content[index + 1]); part++)
        {
            index = EndOfDigits(index + 1, lineEnd);
        }

        return index;
    }

    private static bool IsDateShape(ReadOnlySpan<char> text)
    {
        var year = text.IndexOf('-');
        var rest = text[(year + 1)..];
        return year >= 4 && (rest.Length == 2 || (rest.Length == 5 && rest[2] == '-'));
    }

    private static bool IsForeignDigit(char unit) => unit > '\u007F' && char.IsDigit(unit);
}
