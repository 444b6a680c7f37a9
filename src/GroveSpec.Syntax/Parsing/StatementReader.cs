using System.Collections.Immutable;
using Antlr4.Runtime;
using Antlr4.Runtime.Atn;
using Antlr4.Runtime.Misc;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Reads one statement after the other: first as if all were well, and again forgivingly where it is not.</summary>
internal sealed class StatementReader
{
    private static readonly string[] StatementWords =
        [.. Enumerable.Range(1, Vocabulary.LastWord).Where(Vocabulary.BeginsStatement).Select(Vocabulary.TextOf)];

    private readonly Scanner scanner;
    private readonly GrammarTokenStream stream;
    private readonly TroubleReport report;
    private readonly StrictErrorStrategy strict = new();
    private readonly ForgivingErrorStrategy forgiving;
    private readonly TreeBuilder builder;
    private readonly PlainTrunk plainTrunk;
    private readonly bool isPlainAllowed;
    private readonly ProblemList problems;
    private Grove? parser;

    public StatementReader(string content, Scanner scanner, ProblemList problems, bool isPlainAllowed)
    {
        plainTrunk = new PlainTrunk(content, scanner);
        this.isPlainAllowed = isPlainAllowed;
        this.scanner = scanner;
        stream = new GrammarTokenStream(content);
        report = new TroubleReport(problems, stream);
        this.problems = problems;
        forgiving = new ForgivingErrorStrategy(report);
        builder = new TreeBuilder(content, report, scanner.Tokens);
    }

    /// <summary>The tokens, where words of the language that stand as names have become plain words.</summary>
    public ImmutableArray<SyntaxToken> Tokens => builder.Tokens;

    /// <summary>Reads a statement.</summary>
    public Statement Read(StatementSlice slice)
    {
        report.Clear();
        if (slice.Head == 0)
        {
            return new Statement.Empty { Span = new TextSpan(scanner.Tokens[slice.FirstToken].Span.Start, 0), FirstToken = slice.FirstToken, TokenCount = slice.TokenCount };
        }

        if (slice.Head == Grove.TRUNK && isPlainAllowed && plainTrunk.Read(slice) is { } trunk)
        {
            return trunk;
        }

        var isOdd = Fill(slice);
        var span = TextSpan.FromBounds(stream.At(0).Start, stream.At(stream.Size - 1).End);
        if (!Vocabulary.BeginsStatement(slice.Head) && !MendHead())
        {
            TellUnknown();
            return new Statement.Unknown { Span = span, FirstToken = slice.FirstToken, TokenCount = slice.TokenCount, IsBroken = true };
        }

        report.IsBroken |= isOdd;
        if (Parse() is not { } read)
        {
            report.Add(SyntaxProblemKind.NotUnderstood, span, "This statement could not be read.");
            return new Statement.Unknown { Span = span, FirstToken = slice.FirstToken, TokenCount = slice.TokenCount, IsBroken = true };
        }

        return builder.Build(read.GetChild(0) as ParserRuleContext, slice, span);
    }

    /// <summary>Reads the statement; null when it does not fit the grammar and the file has more trouble than anyone would read.</summary>
    private Grove.StatementContext? Parse()
    {
        if (parser is null)
        {
            parser = new Grove(stream, TextWriter.Null, TextWriter.Null);
            parser.RemoveErrorListeners();
        }

        parser.Interpreter.PredictionMode = PredictionMode.SLL;
        parser.ErrorHandler = strict;
        parser.Reset();
        try
        {
            if (!report.IsBroken)
            {
                return parser.statement();
            }
        }
        catch (ParseCanceledException)
        {
            // Read again below, forgivingly.
        }

        if (problems.Count > Limits.ProblemsReadOn)
        {
            return null;
        }

        parser.Interpreter.PredictionMode = PredictionMode.LL;
        parser.ErrorHandler = forgiving;
        parser.Reset();
        return parser.statement();
    }

    /// <summary>Gives the words of the statement to the stream, and tells whether one of them is odd.</summary>
    private bool Fill(StatementSlice slice)
    {
        stream.Clear();
        var depth = 0;
        var isOdd = false;
        var end = slice.FirstToken + slice.TokenCount;
        var last = 0;
        for (var index = slice.FirstToken; index < end; index++)
        {
            var token = scanner.Tokens[index];
            int type = scanner.Types[index] & ~Scanner.OddFlag;
            if (type == 0)
            {
                if (token.Kind != TokenKind.LineEnd || depth == 0)
                {
                    continue;
                }

                type = Grove.ROW_END;
            }
            else if (type == Grove.OPEN)
            {
                depth++;
            }
            else if (type == Grove.CLOSE)
            {
                depth--;
            }

            var tokenIsOdd = (scanner.Types[index] & Scanner.OddFlag) != 0;
            isOdd |= tokenIsOdd;
            stream.Add(type, token.Span.Start, token.Span.End, index, tokenIsOdd);
            last = token.Span.End;
        }

        stream.Add(TokenConstants.EOF, last, last, -1, isOdd: false);
        return isOdd;
    }

    /// <summary>Takes a misspelt first word for the one that was meant.</summary>
    private bool MendHead()
    {
        var head = stream.At(0);
        if (head.Type is not Grove.WORD)
        {
            return false;
        }

        var text = head.Text;
        var meant = Array.Find(StatementWords, word => word.Equals(text, StringComparison.OrdinalIgnoreCase)) ?? Nearness.Nearest(text, StatementWords);
        if (meant is null)
        {
            return false;
        }

        report.TellMisspelt(head, meant);
        head.Type = Vocabulary.TypeOf(meant);
        return true;
    }

    private void TellUnknown()
    {
        var head = stream.At(0);
        var span = TextSpan.FromBounds(head.Start, head.End);
        if (head.IsOdd)
        {
            return;
        }

        var shown = head.Text.Length <= 40 ? head.Text : string.Concat(head.Text.AsSpan(0, 40), "…");
        report.Add(
            SyntaxProblemKind.NotUnderstood,
            span,
            head.Type switch
            {
                Grove.CLOSE => "This closing brace closes nothing; take it out.",
                Grove.OPEN => "A block belongs to a role, to readings or to a profile; write their word before the brace.",
                _ when Vocabulary.IsWordOfLanguage(head.Type) => $"\"{shown}\" begins no statement; write it on the line of the statement that it belongs to.",
                _ => $"\"{shown}\" begins no statement. A line begins with {KnownWords.Listed(StatementWords)}.",
            });
    }
}
