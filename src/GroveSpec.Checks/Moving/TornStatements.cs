using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Checks.Moving;

/// <summary>Statements that could not be read whole. What they mean is not known, so nothing is written into them.</summary>
internal static class TornStatements
{
    /// <summary>The trunks of a file whose statements could not be read whole.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="tree">The tree of its file.</param>
    /// <returns>Their names.</returns>
    public static ImmutableHashSet<string> Of(CheckContext context, SyntaxTree tree)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(tree);
        if (tree.Problems.IsEmpty)
        {
            return [];
        }

        var file = context.Origins.Locate(Origin.Default).File;
        return
        [
            .. context.Planting.Trunks
                .Where(trunk => context.Origins.StatementOf(trunk.Origin) is var statement && statement.File == file && !IsWhole(statement.Span, tree))
                .Select(trunk => trunk.Name),
        ];
    }

    /// <summary>Whether a statement was read whole.</summary>
    /// <param name="statement">Its place.</param>
    /// <param name="tree">The tree of its file.</param>
    /// <returns>False where a part of it could not be read.</returns>
    public static bool IsWhole(TextSpan statement, SyntaxTree tree) =>
        !tree.Problems.Any(problem => problem.Span.Start <= statement.End && problem.Span.End >= statement.Start);
}
