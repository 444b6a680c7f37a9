using System.Globalization;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <content>One token: texts, words, marks, and what is none of these.</content>
internal sealed partial class Scanner
{
    private void ScanToken(int lineEnd)
    {
        var start = position;
        var first = content[start];
        switch (first)
        {
            case ' ' or '\t':
                position = EndOfRun(start, lineEnd, static unit => unit is ' ' or '\t');
                Add(TokenKind.Blank, 0, start);
                break;
            case '#':
                position = lineEnd;
                Add(TokenKind.Comment, 0, start);
                TellOddCharacters(start, lineEnd, isWord: false);
                break;
            case '"':
                ScanText('"', lineEnd);
                break;
            case '\u201C' or '\u201D' or '\u201E':
                ScanCurlyText(lineEnd);
                break;
            case ',':
                AddMark(Grove.COMMA);
                break;
            case '%':
                AddMark(Grove.PERCENT);
                break;
            case '(':
                AddMark(Grove.LEFT);
                break;
            case ')':
                AddMark(Grove.RIGHT);
                break;
            case '{':
                AddMark(Grove.OPEN);
                depth++;
                break;
            case '}':
                AddMark(Grove.CLOSE);
                depth = Math.Max(0, depth - 1);
                break;
            default:
                if (BeginsNumber(start, lineEnd))
                {
                    ScanNumber(lineEnd);
                }
                else if (IsWordStart(first))
                {
                    ScanWord(lineEnd);
                }
                else
                {
                    ScanStray(lineEnd);
                }

                break;
        }
    }

    private void ScanText(char quote, int lineEnd)
    {
        var start = position;
        var index = start + 1;
        while (index < lineEnd && content[index] != quote)
        {
            index += content[index] == '\\' ? 2 : 1;
        }

        var isClosed = index < lineEnd;
        position = isClosed ? index + 1 : lineEnd;
        BeginLine(Grove.TEXT);
        Add(TokenKind.Text, Grove.TEXT | (isClosed ? 0 : OddFlag), start);
        lastType = Grove.TEXT;
        if (!isClosed)
        {
            problems.Add(
                SyntaxProblemKind.NotClosed,
                TextSpan.FromBounds(start, lineEnd),
                "This text has no closing quote mark on its line; write \" where it ends.");
        }

        TellOddCharacters(start, position, isWord: false);
    }

    private void ScanCurlyText(int lineEnd)
    {
        var start = position;
        var end = content.AsSpan(start + 1, lineEnd - start - 1).IndexOfAny('\u201C', '\u201D');
        position = end < 0 ? lineEnd : start + 1 + end + 1;
        BeginLine(Grove.TEXT);
        Add(TokenKind.Stray, Grove.TEXT | OddFlag, start);
        lastType = Grove.TEXT;
        var inner = content[(start + 1)..(end < 0 ? lineEnd : position - 1)];
        problems.Add(
            SyntaxProblemKind.OddCharacter,
            TextSpan.FromBounds(start, position),
            "A text stands between straight quote marks; write \" at both its ends.",
            $"\"{inner.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"");
    }

    private void ScanWord(int lineEnd)
    {
        var start = position;
        var isAfterNumber = lastType is Grove.NUMBER or Grove.RIGHT;

        // 420x300x60 is read as measures with an x between them.
        if (lastType == Grove.NUMBER && content[start] == 'x' && start + 1 < lineEnd && char.IsAsciiDigit(content[start + 1]))
        {
            position = start + 1;
            Add(TokenKind.Keyword, Grove.X, start);
            lastType = Grove.X;
            return;
        }

        if (lastType == Grove.NUMBER && content[start] == '\u00D7')
        {
            position = start + 1;
            Add(TokenKind.Keyword, Grove.X | OddFlag, start);
            lastType = Grove.X;
            problems.Add(SyntaxProblemKind.OddCharacter, new TextSpan(start, 1), "Between measures stands the letter x; write x for \"\u00D7\".", "x");
            return;
        }

        var isAscii = true;
        var index = start;
        while (index < lineEnd && IsWordPart(content[index]))
        {
            isAscii &= content[index] < 0x80;
            index++;
        }

        position = index;
        var word = content.AsSpan(start, index - start);
        if (!isAscii)
        {
            TellOddCharacters(start, index, isWord: true);
        }

        if (word.Length > Limits.WordCharacters)
        {
            BeginLine(Grove.STRAY);
            TellTooLong(start, index);
            Add(TokenKind.Stray, Grove.STRAY | OddFlag, start);
            lastType = Grove.STRAY;
            return;
        }

        var type = Vocabulary.TypeOf(word);
        if (isAfterNumber && (type == Grove.WORD ? !Units.IsMisspeltWord(word) : type == Grove.IN && IsInches(lineEnd)))
        {
            type = Grove.UNIT;
        }

        BeginLine(type);
        Add(type <= Vocabulary.LastWord ? TokenKind.Keyword : TokenKind.Word, type, start);
        lastType = type;
    }

    /// <summary>In a task "in" behind a number may begin a season; everywhere else it is the unit.</summary>
    private bool IsInches(int lineEnd)
    {
        if (statementHead != Grove.TASK)
        {
            return true;
        }

        var next = EndOfRun(position, lineEnd, static unit => unit is ' ' or '\t');
        if (next >= lineEnd || !IsWordPart(content[next]))
        {
            return true;
        }

        var end = EndOfRun(next, lineEnd, IsWordPart);
        return Vocabulary.TypeOf(content.AsSpan(next, end - next)) != Grove.WORD;
    }

    private void ScanStray(int lineEnd)
    {
        var start = position;
        var unit = content[start];
        if (CharUnicodeInfo.GetUnicodeCategory(unit) == UnicodeCategory.SpaceSeparator)
        {
            position = start + 1;
            Add(TokenKind.Blank, 0, start);
            problems.Add(
                SyntaxProblemKind.OddCharacter,
                new TextSpan(start, 1),
                $"The blank here is an unusual one ({CodePoint(unit)}); write a plain space.",
                " ");
            return;
        }

        position = EndOfRun(start + 1, lineEnd, next => next == unit);
        BeginLine(Grove.STRAY);
        Add(TokenKind.Stray, Grove.STRAY, start);
        lastType = Grove.STRAY;
        if (char.IsControl(unit))
        {
            types[^1] |= OddFlag;
            problems.Add(
                SyntaxProblemKind.OddCharacter,
                TextSpan.FromBounds(start, position),
                $"A character that cannot be seen ({CodePoint(unit)}) stands here; take it out.",
                string.Empty);
        }
    }

    private void TellTooLong(int start, int end) => problems.Add(
        SyntaxProblemKind.TooLarge,
        TextSpan.FromBounds(start, end),
        $"This word has {end - start:N0} characters; no more than {Limits.WordCharacters:N0} are read.");

    /// <summary>Tells the first character of a run that cannot be seen, turns the writing round, or is not UTF-8.</summary>
    private void TellOddCharacters(int start, int end, bool isWord)
    {
        if (content.AsSpan(start, end - start).IndexOfAnyExceptInRange('\u0020', '\u007E') is var offset && offset < 0)
        {
            return;
        }

        if (OddCharacters.FindFirst(content, start + offset, end, isWord) is { } odd)
        {
            problems.Add(SyntaxProblemKind.OddCharacter, odd.Span, odd.Message, odd.Replacement);
        }
    }

    private static string CodePoint(char unit) => $"U+{(int)unit:X4}";

    private int EndOfRun(int index, int end, Func<char, bool> belongs)
    {
        while (index < end && belongs(content[index]))
        {
            index++;
        }

        return index;
    }

    private static bool IsWordStart(char unit) => char.IsAsciiLetter(unit) || unit is '_' or '\'' || IsForeignWordPart(unit);

    private static bool IsWordPart(char unit) => char.IsAsciiLetterOrDigit(unit) || unit is '-' or '_' or '\'' || IsForeignWordPart(unit);

    private static bool IsForeignWordPart(char unit) =>
        unit > '\u009F' && CharUnicodeInfo.GetUnicodeCategory(unit) is not (UnicodeCategory.SpaceSeparator or UnicodeCategory.Control)
        && unit is not ('\u201C' or '\u201D' or '\u201E');

    private void AddMark(int type)
    {
        var start = position++;
        BeginLine(type);
        Add(TokenKind.Mark, type, start);
        lastType = type;
    }
}
