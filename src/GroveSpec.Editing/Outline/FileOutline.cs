using System.Collections.Immutable;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Outline;

/// <summary>Draws up the outline of a file.</summary>
public static class FileOutline
{
    /// <summary>The outline of a file: its planting, trunks, roles, tasks, readings and profiles.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <returns>One entry a statement that gives something a name, in the order of the text.</returns>
    public static ImmutableArray<OutlineEntry> Of(SyntaxTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        return [.. tree.Statements.Select(statement => Entry(tree, statement)).OfType<OutlineEntry>()];
    }

    private static OutlineEntry? Entry(SyntaxTree tree, Statement statement) => statement switch
    {
        Statement.Planting { Name: { Value.Length: > 0 } name } => Make(name.Value, "planting", OutlineKind.Planting, statement.Span, name.Span),
        Statement.Use { Path: { Value.Length: > 0 } path } => Make(path.Value, "used file", OutlineKind.File, statement.Span, path.Span),
        Statement.Trunk { Name: { } name } trunk => Make(name.Text, Detail(tree, trunk), OutlineKind.Trunk, statement.Span, name.Span) with { IsGone = trunk.Clauses.Any(clause => clause is Clause.Removed) },
        Statement.Role { Name: { } name } role => Make(name.Text, string.Join(", ", role.Clauses.Where(clause => clause is Clause.Form or Clause.Vigour).Select(clause => Text(tree, clause))), OutlineKind.Role, statement.Span, name.Span),
        Statement.Task { Name: { } name } task => Make(name.Text, TaskDetail(tree, task), OutlineKind.Task, statement.Span, name.Span),
        Statement.Measured { Date: { } date } measured => Make($"measured {date.Text}", "", OutlineKind.Reading, statement.Span, date.Span) with
        {
            Children = [.. measured.Readings.Select(reading => Make(reading.Trunk.Text, string.Join(", ", reading.Values.Select(value => Text(tree, value))), OutlineKind.Reading, reading.Span, reading.Trunk.Span))],
        },
        Statement.Profile { Name: { } name } => Make(name.Text, "profile", OutlineKind.Profile, statement.Span, name.Span),
        _ => null,
    };

    private static OutlineEntry Make(string name, string detail, OutlineKind kind, TextSpan span, TextSpan nameSpan) => new(name, detail, kind, span, nameSpan, IsGone: false, []);

    private static string Detail(SyntaxTree tree, Statement.Trunk trunk) => string.Join(", ", trunk.Clauses
        .Where(clause => clause is Clause.Thickness or Clause.Height or Clause.Role)
        .Select(clause => clause is Clause.Role role ? role.Name.Text : Text(tree, clause)));

    private static string TaskDetail(SyntaxTree tree, Statement.Task task) =>
        string.Join(' ', new[] { task.OtherKind?.Value ?? task.Kind?.Text, task.Target is { } target ? Text(tree, target) : null }.Where(part => part is not null));

    /// <summary>A part as written, its runs of blanks as one.</summary>
    private static string Text(SyntaxTree tree, SyntaxNode node) => string.Join(' ', tree.Text.Slice(node.Span).Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
