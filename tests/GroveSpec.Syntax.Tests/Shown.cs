using System.Collections;
using System.Text;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Tests;

/// <summary>Writes statements in a short form that tests can compare.</summary>
internal static class Shown
{
    /// <summary>All statements but empty ones, one a line, a broken one marked with "!".</summary>
    public static string Statements(string source) => Statements(GroveParser.Parse(SourceText.FromText(source)));

    /// <summary>All statements but empty ones, one a line, a broken one marked with "!".</summary>
    public static string Statements(SyntaxTree tree) => string.Join('\n', tree.Statements
        .Where(static statement => statement is not Statement.Empty)
        .Select(static statement => (statement.IsBroken ? "!" : string.Empty) + Of(statement)));

    private static string Of(object? value) => value switch
    {
        null => "-",
        string text => text,
        bool flag => flag ? "yes" : "no",
        QuantitySyntax quantity => quantity.Number + quantity.Unit?.Text,
        NameSyntax name => name.Text,
        TextSyntax text => $"\"{text.Value}\"",
        IEnumerable list => $"[{string.Join(' ', list.Cast<object>().Select(Of))}]",
        _ => Parts(value),
    };

    private static string Parts(object value)
    {
        var parts = new StringBuilder(value.GetType().Name.Replace("Syntax", string.Empty, StringComparison.Ordinal));
        foreach (var property in value.GetType().GetConstructors().MaxBy(static constructor => constructor.GetParameters().Length)!.GetParameters())
        {
            parts.Append(' ').Append(Of(value.GetType().GetProperty(property.Name!)!.GetValue(value)));
        }

        return $"({parts})";
    }
}
