using GroveSpec.LanguageServer.Sessions;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.LanguageServer.Features.Diagnostics;

/// <summary>Where a planting's own file names another.</summary>
internal static class UsePlaces
{
    /// <summary>The place that uses a file.</summary>
    /// <param name="document">The planting's own document.</param>
    /// <param name="file">The other file's path as findings name it.</param>
    /// <returns>The text of the <c>use</c> that names it, or the first <c>use</c> where it is used through others; the start of the text where there is none.</returns>
    public static TextSpan Of(OpenDocument document, string file)
    {
        TextSpan? first = null;
        foreach (var use in document.Tree.Statements.OfType<Statement.Use>())
        {
            if (use.Path is not { } path)
            {
                continue;
            }

            first ??= path.Span;
            if (file.EndsWith(path.Value, StringComparison.Ordinal))
            {
                return path.Span;
            }
        }

        return first ?? new TextSpan(0, 0);
    }
}
