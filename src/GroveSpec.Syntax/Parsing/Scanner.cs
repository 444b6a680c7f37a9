using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>
/// Cuts a text into tokens, and the tokens into statements. A statement ends at the end of its line, or of the line on
/// which its block is closed; a block that nobody closed ends before the next line that begins a statement.
/// </summary>
internal sealed class Scanner
{
    /// <summary>Marks the type of a token that cannot be taken as it stands; what is wrong with it has been told.</summary>
    public const byte OddFlag = 0x80;

    private readonly string content;
    private readonly ProblemList problems;
    private readonly ImmutableArray<SyntaxToken>.Builder tokens;
    private readonly List<byte> types;
    private readonly List<StatementSlice> slices = [];
    private readonly Func<int, bool>? isEnd;

    private int position;
    private int statementFirst;
    private int statementHead;
    private int lineFirst;
    private bool isLineBegun;
    private int depth;
    private int lastType;

    /// <summary>Makes one for a whole text, or for a part of it.</summary>
    /// <param name="content">The text.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="start">Where the part begins: the first place of a statement.</param>
    /// <param name="isEnd">Tells whether the part ends at a place where a statement may begin; null to read on to the end.</param>
    public Scanner(string content, ProblemList problems, int start = 0, Func<int, bool>? isEnd = null)
    {
        this.content = content;
        this.problems = problems;
        this.isEnd = isEnd;
        position = start;
        // More than any usual text has: what is never filled costs nothing, and growing would copy all of it.
        var expected = isEnd is null ? (Math.Min(content.Length, Limits.Characters) / 2) + 16 : 64;
        tokens = ImmutableArray.CreateBuilder<SyntaxToken>(expected);
        types = new List<byte>(expected);
    }

    /// <summary>The tokens, covering the text without gap.</summary>
    public ImmutableArray<SyntaxToken> Tokens { get; private set; } = [];

    /// <summary>The grammar's type of each token, 0 for blanks, comments and line ends; with <see cref="OddFlag"/> where one is odd.</summary>
    public List<byte> Types => types;

    /// <summary>The statements, owning every token once and in order.</summary>
    public List<StatementSlice> Slices => slices;

    /// <summary>The first place that was not read.</summary>
    public int Position => position;

    /// <summary>Reads the text, or the part of it.</summary>
    public void Scan()
    {
        var isStart = position == 0;
        if (isStart && content.StartsWith('\uFEFF'))
        {
            position = 1;
            Add(TokenKind.Blank, 0, 0);
        }

        if (isStart && IsUtf16())
        {
            position = content.Length;
            BeginLine(Grove.STRAY);
            Add(TokenKind.Stray, Grove.STRAY | OddFlag, 0);
            problems.Add(SyntaxProblemKind.OddCharacter, new TextSpan(0, 0), "This file is written in UTF-16; save it as UTF-8.");
        }

        for (var lines = 0; position < content.Length; lines++)
        {
            if (lines == Limits.Lines || position >= Limits.Characters)
            {
                SkipRest();
                break;
            }

            if (isEnd is not null && IsBetweenStatements() && isEnd(position))
            {
                break;
            }

            ScanLine();
        }

        EndStatement(tokens.Count);
        Tokens = tokens.DrainToImmutable();
    }

    private bool IsUtf16() =>
        content.StartsWith("\uDCFF\uDCFE", StringComparison.Ordinal) || content.StartsWith("\uDCFE\uDCFF", StringComparison.Ordinal);

    private void SkipRest()
    {
        EndStatement(tokens.Count);
        var start = position;
        position = content.Length;
        Add(TokenKind.Stray, Grove.STRAY | OddFlag, start);
        statementHead = Grove.STRAY;
        problems.Add(
            SyntaxProblemKind.TooLarge,
            new TextSpan(start, 0),
            $"The file is read up to here: no more than {Limits.Lines:N0} lines and {Limits.Characters:N0} characters are. Split it into several plantings.");
    }

    private void ScanLine()
    {
        var rest = content.AsSpan(position);
        var length = rest.IndexOfAny('\n', '\r');
        var lineEnd = length < 0 ? content.Length : position + length;
        lineFirst = tokens.Count;
        isLineBegun = false;
        lastType = 0;
        if (lineEnd - position > Limits.LineCharacters)
        {
            SkipLine(lineEnd);
        }

        while (position < lineEnd)
        {
            ScanToken(lineEnd);
        }

        if (position < content.Length)
        {
            var start = position;
            position += content[position] == '\r' && position + 1 < content.Length && content[position + 1] == '\n' ? 2 : 1;
            Add(TokenKind.LineEnd, 0, start);
        }

        if (depth == 0)
        {
            EndStatement(tokens.Count);
        }
    }

    private void SkipLine(int lineEnd)
    {
        var start = position;
        position = lineEnd;
        BeginLine(Grove.STRAY);
        Add(TokenKind.Stray, Grove.STRAY | OddFlag, start);
        problems.Add(
            SyntaxProblemKind.TooLarge,
            new TextSpan(start, 0),
            $"This line has {lineEnd - start:N0} characters and is not read: no more than {Limits.LineCharacters:N0} are. Write it as several lines.");
    }

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

    private static bool IsForeignDigit(char unit) => unit > '\u007F' && char.IsDigit(unit);

    private void AddMark(int type)
    {
        var start = position++;
        BeginLine(type);
        Add(TokenKind.Mark, type, start);
        lastType = type;
    }

    /// <summary>Called before the token is added that is the first on its line to count.</summary>
    private void BeginLine(int type)
    {
        if (isLineBegun)
        {
            return;
        }

        isLineBegun = true;
        if (depth > 0 && Vocabulary.BeginsStatement(type))
        {
            depth = 0;
            EndStatement(lineFirst);
        }

        if (depth == 0 && type == Grove.OPEN && lineFirst == statementFirst && slices.Count > 0 && MayHaveBlock(slices[^1]))
        {
            statementFirst = slices[^1].FirstToken;
            statementHead = slices[^1].Head;
            slices.RemoveAt(slices.Count - 1);
        }

        if (statementHead == 0)
        {
            statementHead = type;
        }
    }

    /// <summary>Whether the statement takes a block and had none on its own line, so that a brace on the next is its own.</summary>
    private bool MayHaveBlock(StatementSlice slice)
    {
        if (slice.Head is not (Grove.ROLE or Grove.MEASURED or Grove.PROFILE))
        {
            return false;
        }

        for (var index = slice.FirstToken; index < slice.FirstToken + slice.TokenCount; index++)
        {
            if (types[index] == Grove.OPEN)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a statement begins at this place whatever stands here; a brace may belong to the statement before.</summary>
    private bool IsBetweenStatements() => statementFirst == tokens.Count && (slices.Count == 0 || !MayHaveBlock(slices[^1]));

    private void EndStatement(int endToken)
    {
        if (endToken > statementFirst)
        {
            slices.Add(new StatementSlice(statementFirst, endToken - statementFirst, statementHead));
        }

        statementFirst = endToken;
        statementHead = 0;
    }

    private void Add(TokenKind kind, int type, int start)
    {
        // Only the rest of a text far too large to be read is ever longer than one token can be.
        for (; position - start > SyntaxToken.Longest; start += SyntaxToken.Longest)
        {
            tokens.Add(new SyntaxToken(kind, new TextSpan(start, SyntaxToken.Longest)));
            types.Add((byte)type);
        }

        tokens.Add(new SyntaxToken(kind, TextSpan.FromBounds(start, position)));
        types.Add((byte)type);
    }
}
