using System.Collections.Immutable;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>The problems of a text as they are found; no more are kept than anyone would read.</summary>
internal sealed class ProblemList
{
    private readonly List<SyntaxProblem> problems = [];
    private int untold;

    /// <summary>How many were found.</summary>
    public int Count => problems.Count + untold;

    /// <summary>Adds a problem.</summary>
    public void Add(SyntaxProblemKind kind, TextSpan span, string message, string? replacement = null)
    {
        if (problems.Count < Limits.Problems)
        {
            problems.Add(new SyntaxProblem(kind, span, message, replacement));
        }
        else
        {
            untold++;
        }
    }

    /// <summary>All of them in the order of the text, with a last one that counts those not told.</summary>
    public ImmutableArray<SyntaxProblem> ToImmutable(int textLength)
    {
        if (problems.Count == 0)
        {
            return [];
        }

        var sorted = problems.Select((problem, index) => (problem, index)).ToArray();
        Array.Sort(sorted, static (left, right) =>
            left.problem.Span != right.problem.Span ? left.problem.Span.CompareTo(right.problem.Span) : left.index.CompareTo(right.index));
        var told = ImmutableArray.CreateBuilder<SyntaxProblem>(sorted.Length + 1);
        foreach (var (problem, _) in sorted)
        {
            told.Add(problem);
        }

        if (untold > 0)
        {
            told.Add(new SyntaxProblem(
                SyntaxProblemKind.NotUnderstood,
                new TextSpan(textLength, 0),
                $"{untold} more places in this file could not be read; they are told once those above are mended.",
                null));
        }

        return told.ToImmutable();
    }
}
