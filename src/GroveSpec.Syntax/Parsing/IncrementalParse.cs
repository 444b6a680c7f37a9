using System.Collections.Immutable;
using System.Runtime.InteropServices;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>
/// Reads a text by the tree of the one before. Reading begins a statement before the edit and ends where both texts go on alike
/// from the start of a statement, since from there on what the scanner makes of a text hangs on nothing that stands before.
/// </summary>
internal sealed class IncrementalParse
{
    private readonly SyntaxTree before;
    private readonly TextChange change;

    // The statement of the tree before with which reading begins, and the one from which on its statements are taken again.
    private readonly int first;
    private int next;

    private IncrementalParse(SyntaxTree before, TextChange change)
    {
        this.before = before;
        this.change = change;

        // The statement before the one that was touched may end elsewhere now: the line behind it need no longer begin a statement, may
        // begin with the brace of its block, or with the line feed that belongs to its carriage return.
        first = Math.Max(0, StatementAt(change.Start) - 1);
        while (IsProblemBetween(first))
        {
            first--;
        }

        next = first;
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="before">The tree of another text.</param>
    /// <returns>Its tree; null where it has to be read as a whole.</returns>
    public static SyntaxTree? Of(SourceText text, SyntaxTree before)
    {
        if (before.Statements.IsEmpty || !IsReadInFull(before) || !IsWithinLimits(text.Content))
        {
            return null;
        }

        var change = TextChange.Between(before.Text.Content, text.Content);
        return change.IsNone ? before with { Text = text } : new IncrementalParse(before, change).Read(text);
    }

    /// <summary>Whether nothing of a tree hangs on how much stands before it: none was left unread, and every problem is told.</summary>
    private static bool IsReadInFull(SyntaxTree tree)
    {
        foreach (var problem in tree.Problems)
        {
            if (problem.Kind == SyntaxProblemKind.TooLarge)
            {
                return false;
            }
        }

        return tree.Problems.Length <= Limits.Problems;
    }

    private static bool IsWithinLimits(ReadOnlySpan<char> content) =>
        content.Length < Limits.Characters && content.Count('\n') + content.Count('\r') < Limits.Lines;

    private SyntaxTree? Read(SourceText text)
    {
        var from = StartOf(first);
        var problems = new ProblemList();
        var scanner = new Scanner(text.Content, problems, from, IsStatementAgain);
        scanner.Scan();
        var reader = new StatementReader(text.Content, scanner, problems, isPlainAllowed: true);
        var read = new Statement[scanner.Slices.Count];
        for (var index = 0; index < read.Length; index++)
        {
            read[index] = reader.Read(scanner.Slices[index]);
        }

        if (scanner.Position == text.Length)
        {
            next = before.Statements.Length;
        }

        return Problems(from, problems, text.Length) is { } all ? new SyntaxTree(text, Tokens(reader.Tokens), Statements(read, reader.Tokens.Length), all) : null;
    }

    /// <summary>Whether a place of the new text lies behind the edit and was the start of a statement.</summary>
    private bool IsStatementAgain(int position)
    {
        // The first statement may begin with a byte order mark, which is one only there.
        var place = position - change.Growth;
        if (place < change.EndBefore || place == 0)
        {
            return false;
        }

        while (next < before.Statements.Length && StartOf(next) < place)
        {
            next++;
        }

        return next < before.Statements.Length && StartOf(next) == place && !IsProblemBetween(next);
    }

    /// <summary>Whether a problem stands between a statement and the one before it: that of a block without a start is told there, and it is the other's.</summary>
    private bool IsProblemBetween(int statement)
    {
        if (statement > 0)
        {
            var between = new TextSpan(StartOf(statement), 0);
            foreach (var problem in before.Problems)
            {
                if (problem.Span == between)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private ImmutableArray<SyntaxToken> Tokens(ImmutableArray<SyntaxToken> read)
    {
        var kept = FirstTokenOf(first);
        var again = before.Tokens.AsSpan(FirstTokenOf(next)..);
        var tokens = new SyntaxToken[kept + read.Length + again.Length];
        before.Tokens.AsSpan(..kept).CopyTo(tokens);
        read.CopyTo(tokens, kept);
        var rest = tokens.AsSpan(kept + read.Length);
        for (var index = 0; index < again.Length; index++)
        {
            rest[index] = again[index].Moved(change.Growth);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(tokens);
    }

    private ImmutableArray<Statement> Statements(Statement[] read, int tokensRead)
    {
        var kept = FirstTokenOf(first);
        var statements = new Statement[first + read.Length + before.Statements.Length - next];
        before.Statements.AsSpan(..first).CopyTo(statements);
        for (var index = 0; index < read.Length; index++)
        {
            statements[first + index] = read[index] with { FirstToken = kept + read[index].FirstToken };
        }

        var moved = new MovedStatement(change.Growth, kept + tokensRead - FirstTokenOf(next));
        for (var index = next; index < before.Statements.Length; index++)
        {
            statements[first + read.Length + index - next] = moved.Of(before.Statements[index]);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(statements);
    }

    /// <summary>The problems of all statements; null where there are more than are told one by one.</summary>
    private ImmutableArray<SyntaxProblem>? Problems(int from, ProblemList read, int textLength)
    {
        var all = ImmutableArray.CreateBuilder<SyntaxProblem>();
        foreach (var problem in before.Problems)
        {
            if (problem.Span.Start < from)
            {
                all.Add(problem);
            }
        }

        all.AddRange(read.ToImmutable(textLength));
        if (next < before.Statements.Length)
        {
            var again = StartOf(next);
            foreach (var problem in before.Problems)
            {
                if (problem.Span.Start >= again)
                {
                    all.Add(problem with { Span = problem.Span.Moved(change.Growth) });
                }
            }
        }

        return all.Count > Limits.Problems ? null : all.DrainToImmutable();
    }

    /// <summary>The last statement that begins at a place or before it.</summary>
    private int StatementAt(int place)
    {
        var (low, high) = (0, before.Statements.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (StartOf(middle) <= place)
            {
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        return low;
    }

    private int FirstTokenOf(int statement) => statement < before.Statements.Length ? before.Statements[statement].FirstToken : before.Tokens.Length;

    private int StartOf(int statement) => before.Tokens[before.Statements[statement].FirstToken].Span.Start;
}
