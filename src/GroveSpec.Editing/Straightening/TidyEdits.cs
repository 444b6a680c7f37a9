using System.Collections.Immutable;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Straightening;

/// <summary>Finds the few edits that bring a text into its tidy form, so that carets and marks elsewhere stay where they are.</summary>
public static class TidyEdits
{
    /// <summary>The edits for some lines of a file.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <param name="within">The run of text whose lines are set straight; null for all. Their columns are those of the whole file.</param>
    /// <returns>Edits of whole lines, none overlapping, in the order of the text; none where all is tidy. <see cref="SourceSpan.File"/> is empty.</returns>
    public static ImmutableArray<TextEdit> Of(SyntaxTree tree, TextSpan? within = null)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var before = Lines(tree.Text.Content);
        var after = Lines(Tidy.Format(tree));
        var edits = ImmutableArray.CreateBuilder<TextEdit>();
        if (before.Count == after.Count)
        {
            // The printer keeps lines where it can; then each line is compared with itself.
            var at = 0;
            for (var index = 0; index < before.Count; index++)
            {
                Add(at, before[index], after[index]);
                at += before[index].Length;
            }
        }
        else
        {
            var (start, end) = (0, 0);
            while (start < before.Count && start < after.Count && before[start] == after[start])
            {
                start++;
            }

            while (end < before.Count - start && end < after.Count - start && before[^(end + 1)] == after[^(end + 1)])
            {
                end++;
            }

            Add(before.Take(start).Sum(line => line.Length), string.Concat(before.Skip(start).SkipLast(end)), string.Concat(after.Skip(start).SkipLast(end)));
        }

        return edits.ToImmutable();

        void Add(int at, string old, string tidy)
        {
            if (old != tidy && (within is not { } run || IsTouched(run, at, at + old.Length, tree.Text.Length)))
            {
                edits.Add(new(new("", new(at, old.Length)), tidy));
            }
        }
    }

    /// <summary>Whether a run has part in a line. A run that ends where the line starts has none; a caret has part in the line where it stands.</summary>
    private static bool IsTouched(TextSpan run, int start, int end, int textEnd) =>
        (run.Length == 0 ? start <= run.End : start < run.End) && (end > run.Start || end == textEnd);

    /// <summary>The lines of a text with their ends; together they are the text.</summary>
    private static List<string> Lines(string text)
    {
        var lines = new List<string>();
        var start = 0;
        for (var index = 0; index < text.Length; index++)
        {
            if (text[index] == '\n' || (text[index] == '\r' && (index + 1 == text.Length || text[index + 1] != '\n')))
            {
                lines.Add(text[start..(index + 1)]);
                start = index + 1;
            }
        }

        if (start < text.Length)
        {
            lines.Add(text[start..]);
        }

        return lines;
    }
}
