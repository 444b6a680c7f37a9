using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;
using System.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Fuzz.Tests;

/// <summary>Writes a tree's statements out, so that two trees can be compared.</summary>
internal static class TreeOutline
{
    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Properties = new();

    /// <summary>Every statement with its parts and where they stand.</summary>
    public static string WithSpans(SyntaxTree tree)
    {
        var text = new StringBuilder();
        foreach (var statement in tree.Statements)
        {
            Write(text, statement, hasSpans: true);
            text.Append('\n');
        }

        foreach (var problem in tree.Problems)
        {
            text.Append(problem).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>What every statement says, wherever it stands, one piece a line. A unit that is left out is the line "unit ?".</summary>
    public static IReadOnlyList<string> Meaning(SyntaxTree tree)
    {
        var text = new StringBuilder();
        foreach (var statement in tree.Statements)
        {
            if (statement is not Statement.Empty)
            {
                Write(text, statement, hasSpans: false);
            }
        }

        return text.ToString().Split('\n');
    }

    /// <summary>Every comment, without the blanks at its end.</summary>
    public static IReadOnlyList<string> Comments(SyntaxTree tree) =>
        [.. tree.Tokens.Where(static token => token.Kind == TokenKind.Comment).Select(token => tree.Text.Slice(token.Span).TrimEnd())];

    private static void Write(StringBuilder text, object? value, bool hasSpans)
    {
        switch (value)
        {
            case null:
                text.Append("nothing\n");
                break;
            case string or bool or int:
                text.Append(value).Append('\n');
                break;
            case QuantitySyntax quantity when !hasSpans:
                text.Append(quantity.Number).Append("\nunit ").Append(quantity.Unit?.Text ?? "?").Append('\n');
                break;
            case IEnumerable list:
                text.Append("[\n");
                foreach (var item in list)
                {
                    Write(text, item, hasSpans);
                }

                text.Append("]\n");
                break;
            default:
                text.Append(value.GetType().Name).Append('\n');
                foreach (var property in Properties.GetOrAdd(value.GetType(), static type => [.. type.GetProperties().OrderBy(static property => property.Name, StringComparer.Ordinal)]))
                {
                    if (property.Name == nameof(SyntaxNode.Span))
                    {
                        text.Append(hasSpans ? property.GetValue(value) : string.Empty).Append('\n');
                    }
                    else if (hasSpans || property.Name is not (nameof(Statement.FirstToken) or nameof(Statement.TokenCount)))
                    {
                        Write(text, property.GetValue(value), hasSpans);
                    }
                }

                break;
        }
    }
}
