using System.Buffers;
using System.Collections.Immutable;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Names;

/// <summary>Decides which names can be changed, and into what.</summary>
public static class Renaming
{
    private static readonly SearchValues<char> NeverInNames = SearchValues.Create("\r\n\t #\"{}(),%");

    /// <summary>Why what stands at a place cannot be renamed.</summary>
    /// <param name="use">What stands there.</param>
    /// <returns>A sentence; null when it can be.</returns>
    public static string? Refusal(NameUse? use) => use?.Kind switch
    {
        null => "There is no name here: put the caret on the name of a trunk, a role, a task or a species.",
        NameKind.Check => "The names of checks belong to the language and cannot be changed.",
        NameKind.File => "This names a file: rename the file itself, and then the path here.",
        _ => null,
    };

    /// <summary>Why a thing cannot bear a name.</summary>
    /// <param name="use">The thing by its present name.</param>
    /// <param name="newName">The new name.</param>
    /// <param name="trees">The files that would be changed.</param>
    /// <returns>A sentence; null when it can.</returns>
    public static string? Refusal(NameUse use, string newName, IEnumerable<SyntaxTree> trees)
    {
        ArgumentNullException.ThrowIfNull(newName);
        ArgumentNullException.ThrowIfNull(trees);
        if (!IsName(use.Kind, newName))
        {
            return $"\"{ShortText.Of(newName)}\" cannot be the name of {Thing(use.Kind)}: a name is one word of letters, digits, hyphens and underscores, begins with a letter, and is no word of the language.";
        }

        var wanted = use with { Name = NameForm.Of(newName) };
        foreach (var tree in trees)
        {
            foreach (var other in NameUses.Of(tree))
            {
                if (other.IsDeclaration && other.Means(wanted) && wanted.Name != use.Name)
                {
                    return $"There is {Thing(use.Kind)} called {ShortText.Of(newName)} already: take another name, or the two could not be told apart.";
                }
            }
        }

        return null;
    }

    /// <summary>The edits that give a thing another name in one file.</summary>
    /// <param name="file">The file's path as edits are to name it.</param>
    /// <param name="tree">Its tree.</param>
    /// <param name="use">The thing by its present name.</param>
    /// <param name="newName">The new name.</param>
    /// <returns>One edit a place, in the order of the text.</returns>
    public static ImmutableArray<TextEdit> Edits(string file, SyntaxTree tree, NameUse use, string newName) =>
        [.. NameUses.Of(tree).Where(other => other.Means(use)).Select(other => new TextEdit(new SourceSpan(file, other.Span), newName))];

    /// <summary>Reads the name in a statement of its kind, as the language itself would.</summary>
    private static bool IsName(NameKind kind, string name)
    {
        if (name.Length == 0 || name.AsSpan().IndexOfAny(NeverInNames) >= 0)
        {
            return false;
        }

        var tree = GroveParser.Parse(SourceText.FromText(kind switch
        {
            NameKind.Trunk => $"tape {name} to {name} 1 mm\n",
            NameKind.Role => $"role {name} {{ form stout }}\n",
            NameKind.Task => $"task {name} unwire of {name} after {name}\n",
            _ => $"species {name}\n",
        }));

        // Every place must read it as a name: "after" and a stage of the year is a time.
        var places = kind switch { NameKind.Trunk => 2, NameKind.Task => 3, _ => 1 };
        return tree.Problems.IsEmpty && NameUses.Of(tree).Count(use => use.Kind == kind && use.Span.Length == name.Length) == places;
    }

    private static string Thing(NameKind kind) => kind switch
    {
        NameKind.Trunk => "a trunk",
        NameKind.Role => "a role",
        NameKind.Task => "a task",
        _ => "a species",
    };
}
