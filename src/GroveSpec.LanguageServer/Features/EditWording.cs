using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features;

/// <summary>Puts edits into the protocol's words.</summary>
internal static class EditWording
{
    /// <summary>Edits of some documents.</summary>
    /// <param name="session">The session.</param>
    /// <param name="documents">Each document's address, the version of its text where it is open, and its edits.</param>
    /// <returns>The edits, bound to versions where the editor understands that, so that an older answer never changes a newer text.</returns>
    public static WorkspaceEdit Of(Session session, IEnumerable<(string Uri, int? Version, IReadOnlyList<TextEdit> Edits)> documents)
    {
        var changed = documents.Where(document => document.Edits.Count > 0).ToList();
        return session.Capabilities.Workspace?.WorkspaceEdit?.DocumentChanges == true
            ? new(DocumentChanges: [.. changed.Select(document => new TextDocumentEdit(new(document.Uri, document.Version), [.. document.Edits]))])
            : new(Changes: changed.ToDictionary(document => document.Uri, document => document.Edits.ToArray(), StringComparer.Ordinal));
    }
}
