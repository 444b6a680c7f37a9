using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.LanguageServer.Features.DocumentLinks;

/// <summary>Leads from a <c>use</c> to the file it names.</summary>
internal static class DocumentLinkAnswer
{
    /// <summary>The links of a document: only to files that were read, so none leads out of the folder.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The links.</returns>
    public static DocumentLink[] Of(OpenDocument document)
    {
        var links = new List<DocumentLink>();
        foreach (var use in document.Tree.Statements.OfType<Statement.Use>())
        {
            if (use.Path is { } path && document.Assessment.Used.FirstOrDefault(used => Path.IsPathRooted(used.Path) && used.Path.EndsWith(path.Value, StringComparison.Ordinal)) is { } file)
            {
                links.Add(new(document.Positions.RangeOf(path.Span), DocumentAddress.UriOf(Path.GetFullPath(file.Path)), "Open the file whose roles, tolerances and profiles are used here"));
            }
        }

        return [.. links];
    }
}
