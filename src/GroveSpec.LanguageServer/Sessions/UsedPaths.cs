using GroveSpec.Binding;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>Which files a planting looks at beside its own.</summary>
internal static class UsedPaths
{
    /// <summary>Whether a planting uses a file, itself or through others, be the file there or not.</summary>
    /// <param name="assessment">The planting.</param>
    /// <param name="key">The file's full path.</param>
    /// <returns>True when a change of the file may change what is known of the planting.</returns>
    public static bool Has(Assessment assessment, string key) =>
        Named(assessment.Tree, assessment.File, key) || assessment.Used.Any(used => IsSame(used.Path, key) || Named(used.Tree, used.Path, key));

    private static bool Named(SyntaxTree tree, string file, string key)
    {
        foreach (var statement in tree.Statements)
        {
            if (statement is Statement.Use { Path: { } path } && Path.GetDirectoryName(file) is { } folder && IsSame(Path.Combine(folder, path.Value), key))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsSame(string path, string key)
    {
        try
        {
            return Path.GetFullPath(path) == key;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
