using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Checks.Fronts;

/// <summary>Writes a front into the text.</summary>
public static class FrontEdits
{
    private const string Word = "viewed";

    /// <summary>
    /// The edit that puts the viewer at a bearing and touches nothing else: it changes the bearing that is written, or writes one into the
    /// statement that has none, or writes a statement behind the others of the head.
    /// </summary>
    /// <param name="context">The planting.</param>
    /// <param name="tree">The tree of its file.</param>
    /// <param name="from">The bearing; it is written to a hundredth of a degree.</param>
    /// <returns>The edit; none where the file has a statement that could not be read whole.</returns>
    public static ImmutableArray<TextEdit> Of(CheckContext context, SyntaxTree tree, Bearing from)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(tree);
        var written = string.Create(CultureInfo.InvariantCulture, $"from {from.Degrees:0.##} deg");
        if (tree.Statements.OfType<Statement.Viewed>().FirstOrDefault() is not { } viewed)
        {
            var behind = Head(context.Planting).OrderBy(origin => context.Origins.StatementOf(origin).Span.End).LastOrDefault(Origin.Default);
            return [context.Origins.WriteBehind(behind, $"{Word} {written}")];
        }

        if (viewed.IsBroken)
        {
            return [];
        }

        var file = context.Origins.Locate(Origin.Default).File;
        var place = viewed.Clauses.OfType<Clause.ViewedFrom>().FirstOrDefault()?.Span;
        return place is { } span
            ? [new TextEdit(new SourceSpan(file, span), written)]
            : [new TextEdit(new SourceSpan(file, new TextSpan(viewed.Span.Start + Word.Length, 0)), viewed.Clauses.IsEmpty ? $" {written}" : $" {written},")];
    }

    private static IEnumerable<Origin> Head(Planting planting)
    {
        if (planting.Name is { } name)
        {
            yield return name.Origin;
        }

        if (planting.Habit is { } habit)
        {
            yield return habit.Origin;
        }

        if (planting.Species is { } species)
        {
            yield return species.Origin;
        }

        if (planting.Container is { } container)
        {
            yield return container.Origin;
        }

        if (planting.Site is { } site)
        {
            yield return site.Origin;
        }
    }
}
