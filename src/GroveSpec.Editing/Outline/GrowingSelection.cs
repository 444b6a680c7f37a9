using System.Collections.Immutable;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Outline;

/// <summary>Finds what a selection grows to, step by step.</summary>
public static class GrowingSelection
{
    /// <summary>The runs of text round a place, each within the next: a word, a quantity or clause, a row, a statement, the file.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <param name="offset">The place.</param>
    /// <returns>At least one run, the smallest first.</returns>
    public static ImmutableArray<TextSpan> At(SyntaxTree tree, int offset)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var spans = new List<TextSpan> { new(0, tree.Text.Length) };
        foreach (var statement in tree.Statements)
        {
            if (statement is Statement.Empty || !statement.Span.Touches(offset))
            {
                continue;
            }

            spans.Add(statement.Span);
            spans.AddRange(Parts(statement).Where(part => part.Touches(offset)));
            for (var index = statement.FirstToken; index < statement.FirstToken + statement.TokenCount; index++)
            {
                var token = tree.Tokens[index];
                if (token.Kind is not (TokenKind.Blank or TokenKind.LineEnd) && token.Span.Touches(offset))
                {
                    spans.Add(token.Span);
                }
            }

            break;
        }

        // Largest first; what does not lie within the one before it is left out.
        var found = new List<TextSpan>();
        foreach (var span in spans.OrderByDescending(span => span.Length).ThenBy(span => span.Start))
        {
            if (found.Count == 0 || (span.Start >= found[^1].Start && span.End <= found[^1].End && span != found[^1]))
            {
                found.Add(span);
            }
        }

        found.Reverse();
        return [.. found];
    }

    private static IEnumerable<TextSpan> Parts(Statement statement) => statement switch
    {
        Statement.Trunk trunk => Spans(trunk.Clauses),
        Statement.Role role => Spans(role.Clauses),
        Statement.Task task => Spans(task.Clauses).Concat(task.Target is { } target ? [target.Span] : []),
        Statement.Site site => Spans(site.Clauses),
        Statement.Viewed viewed => Spans(viewed.Clauses),
        Statement.Measured measured => measured.Readings.SelectMany(reading => Spans(reading.Values).Prepend(reading.Span)),
        Statement.Profile profile => profile.Entries.Select(entry => entry.Span),
        Statement.Tape { Distance: { } distance } => [distance.Span],
        Statement.Tolerance { Limit: { } limit } => [limit.Span],
        _ => [],
    };

    private static IEnumerable<TextSpan> Spans(ImmutableArray<Clause> clauses) => clauses.Select(clause => clause.Span);
}
