using System.Collections.Immutable;
using System.Text;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Completing;

/// <summary>The form of a statement that is being written.</summary>
/// <param name="Text">The form on one line.</param>
/// <param name="Purpose">What the statement is for.</param>
/// <param name="Parts">Its parts, each with where it stands in the form and what it is for.</param>
/// <param name="Current">Which part is being written; null at the statement's name or in a part that the form does not show.</param>
public sealed record StatementForm(string Text, string Purpose, ImmutableArray<(TextSpan Span, string Word, string Purpose)> Parts, int? Current)
{
    /// <summary>The form of the statement at a place.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <param name="offset">The caret.</param>
    /// <returns>The form; null where no statement has begun.</returns>
    public static StatementForm? At(SyntaxTree tree, int offset)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var place = CaretPlace.At(tree, Math.Clamp(offset, 0, tree.Text.Length));
        foreach (var (word, purpose, form) in StatementForms.Statements)
        {
            if (word == place.Head)
            {
                return Make(word, purpose, form, place);
            }
        }

        return null;
    }

    private static StatementForm Make(string word, string purpose, string form, CaretPlace place)
    {
        ImmutableArray<(string Statement, string Word, string Purpose, string Form)> clauses = [.. StatementForms.Clauses.Where(clause => clause.Statement == word)];
        var text = new StringBuilder();
        var parts = ImmutableArray.CreateBuilder<(TextSpan, string, string)>();
        if (clauses.IsEmpty)
        {
            text.Append(Plain(form));
            return new(text.ToString(), purpose, [], null);
        }

        text.Append(word).Append(word is "site" or "viewed" ? "" : word == "measured" ? " DATE { TRUNK" : word == "task" ? " NAME KIND" : " NAME").Append(word is "role" or "profile" ? " {" : "");
        foreach (var clause in clauses)
        {
            text.Append(' ');
            parts.Add((new(text.Length, Plain(clause.Form).Length), clause.Word, clause.Purpose));
            text.Append(Plain(clause.Form));
        }

        text.Append(word is "role" or "profile" or "measured" ? " }" : "");
        for (var back = 1; back <= place.Near.Length; back++)
        {
            for (var index = 0; index < clauses.Length; index++)
            {
                if (clauses[index].Word == place.Back(back) && (back < place.Near.Length || place.IsInBraces))
                {
                    return new(text.ToString(), purpose, parts.ToImmutable(), index);
                }
            }
        }

        return new(text.ToString(), purpose, parts.ToImmutable(), null);
    }

    private static string Plain(string form) => form.Replace("‹", "", StringComparison.Ordinal).Replace("›", "", StringComparison.Ordinal).Replace("\n", " ", StringComparison.Ordinal);
}
