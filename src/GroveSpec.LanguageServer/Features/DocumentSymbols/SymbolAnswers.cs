using GroveSpec.Editing.Outline;
using GroveSpec.LanguageServer.Features.WorkspaceFiles;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.DocumentSymbols;

/// <summary>Gives outlines.</summary>
internal static class SymbolAnswers
{
    private const int Deprecated = 1;
    private const int Most = 1_000;

    /// <summary>The outline of a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>Its entries in the order of the text.</returns>
    public static DocumentSymbol[] OfDocument(OpenDocument document) => [.. FileOutline.Of(document.Tree).Select(entry => Symbol(document, entry))];

    /// <summary>The outline of a document for an editor that shows no tree: each entry with the one that holds it.</summary>
    /// <param name="document">The document.</param>
    /// <returns>Its entries in the order of the text, what an entry holds behind it.</returns>
    public static SymbolInformation[] ListOfDocument(OpenDocument document) => [.. FileOutline.Of(document.Tree).SelectMany(entry => List(document, entry, null))];

    /// <summary>What is called so, or nearly so, in any planting file.</summary>
    /// <param name="session">The session.</param>
    /// <param name="asked">Letters that stand in the name in this order, large or small; none for all.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>What was found, by file; at most 1,000.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static WorkspaceSymbol[] OfWorkspace(Session session, WorkspaceSymbolParams asked, CancellationToken cancellation)
    {
        var found = new List<WorkspaceSymbol>();
        using var work = new WorkProgress(session, asked.WorkDoneToken, "Looking for names in the plantings of this workspace", cancellation);
        foreach (var document in PlantingFiles.All(session, work))
        {
            foreach (var entry in FileOutline.Of(document.Tree))
            {
                if (entry.Kind is not (OutlineKind.File or OutlineKind.Reading) && Has(entry.Name, asked.Query) && found.Count < Most)
                {
                    found.Add(new(entry.Name, KindOf(entry.Kind), new(document.Uri, document.Positions.RangeOf(entry.NameSpan)), document.Assessment.Planting.Name?.Value ?? Path.GetFileName(document.Key)));
                }
            }
        }

        return [.. found];
    }

    private static DocumentSymbol Symbol(OpenDocument document, OutlineEntry entry) => new(
        entry.Name,
        KindOf(entry.Kind),
        document.Positions.RangeOf(entry.Span),
        document.Positions.RangeOf(entry.NameSpan),
        entry.Detail.Length == 0 ? null : entry.Detail,
        entry.IsGone ? [Deprecated] : null,
        entry.Children.IsEmpty ? null : [.. entry.Children.Select(child => Symbol(document, child))]);

    private static IEnumerable<SymbolInformation> List(OpenDocument document, OutlineEntry entry, string? holder) => entry.Children
        .SelectMany(child => List(document, child, entry.Name))
        .Prepend(new(entry.Name, KindOf(entry.Kind), new(document.Uri, document.Positions.RangeOf(entry.Span)), holder, entry.IsGone ? [Deprecated] : null));

    private static bool Has(string name, string query)
    {
        var at = 0;
        foreach (var letter in query)
        {
            at = name.AsSpan(at).IndexOf([letter], StringComparison.OrdinalIgnoreCase) is var next and >= 0 ? at + next + 1 : -1;
            if (at < 0)
            {
                return false;
            }
        }

        return true;
    }

    private static int KindOf(OutlineKind kind) => kind switch
    {
        OutlineKind.Planting => 4,
        OutlineKind.Trunk => 8,
        OutlineKind.Role => 5,
        OutlineKind.Task => 24,
        OutlineKind.Reading => 16,
        OutlineKind.Profile => 23,
        _ => 1,
    };
}
