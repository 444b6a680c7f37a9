using System.Collections.Immutable;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>
/// Cuts a text into tokens, and the tokens into statements. A statement ends at the end of its line, or of the line on
/// which its block is closed; a block that nobody closed ends before the next line that begins a statement.
/// </summary>
internal sealed partial class Scanner
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
