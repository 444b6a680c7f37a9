using System.Collections.Immutable;
using GroveSpec.Editing.Names;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Colouring;

/// <summary>Tells what each word of a file is.</summary>
public static class WordClasses
{
    /// <summary>The words of a run of text.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <param name="within">The run; words that touch it count.</param>
    /// <returns>The words in order; marks and blanks are left out.</returns>
    public static ImmutableArray<ClassedWord> Of(SyntaxTree tree, TextSpan within)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var names = NameUses.Of(tree);
        var next = 0;
        var found = ImmutableArray.CreateBuilder<ClassedWord>();
        var before = TokenKind.LineEnd;
        foreach (var token in tree.Tokens)
        {
            while (next < names.Length && names[next].Span.Start < token.Span.Start)
            {
                next++;
            }

            var name = next < names.Length && names[next].Span.Start == token.Span.Start && names[next].Kind != NameKind.File ? names[next] : (NameUse?)null;
            if (token.Span.Length > 0 && token.Span.Start <= within.End && token.Span.End >= within.Start && ClassOf(tree.Text, token, name, before) is { } kind)
            {
                found.Add(new(token.Span, kind, name?.IsDeclaration ?? false));
            }

            if (token.Kind != TokenKind.Blank)
            {
                before = token.Kind;
            }
        }

        return found.ToImmutable();
    }

    private static WordClass? ClassOf(SourceText text, SyntaxToken token, NameUse? name, TokenKind before) => name?.Kind switch
    {
        NameKind.Trunk => WordClass.Trunk,
        NameKind.Role => WordClass.Role,
        NameKind.Task => WordClass.Task,
        NameKind.Species => WordClass.Species,
        NameKind.Check => WordClass.Check,
        _ => token.Kind switch
        {
            TokenKind.Keyword => WordClass.Keyword,
            TokenKind.Word => before == TokenKind.Number && Units.IsUnit(text.Content.AsSpan(token.Span.Start, token.Span.Length)) ? WordClass.Unit : WordClass.Choice,
            TokenKind.Number or TokenKind.Date => WordClass.Number,
            TokenKind.Text => WordClass.Text,
            TokenKind.Comment => WordClass.Comment,
            TokenKind.Mark when token.Span.Length == 1 && text.Content[token.Span.Start] == '%' => WordClass.Unit,
            _ => null,
        },
    };
}
