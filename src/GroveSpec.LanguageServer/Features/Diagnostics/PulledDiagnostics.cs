using System.Globalization;
using System.Text.Json;
using GroveSpec.LanguageServer.Features.WorkspaceFiles;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.Diagnostics;

/// <summary>Answers an editor that asks for findings itself.</summary>
internal static class PulledDiagnostics
{
    /// <summary>The findings of one document.</summary>
    /// <param name="session">The session.</param>
    /// <param name="document">The document.</param>
    /// <param name="asked">What is known of it already.</param>
    /// <returns>The findings, or that they are what they were.</returns>
    public static DocumentDiagnosticReport Of(Session session, OpenDocument document, DocumentDiagnosticParams asked)
    {
        var items = DiagnosticList.Of(document);
        session.Publication.LeaveToEditor(document);
        var mark = MarkOf(items);
        return mark == asked.PreviousResultId ? new("unchanged", mark) : new("full", mark, items);
    }

    /// <summary>The findings of every document that is open and every planting file of the folders.</summary>
    /// <param name="session">The session.</param>
    /// <param name="asked">What is known already.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>A report a file.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static WorkspaceDiagnosticReport OfWorkspace(Session session, WorkspaceDiagnosticParams asked, CancellationToken cancellation)
    {
        var known = asked.PreviousResultIds.ToLookup(known => DocumentAddress.KeyOf(known.Uri), known => known.Value, StringComparer.Ordinal);
        var reports = new List<WorkspaceDocumentDiagnosticReport>();
        using var work = new WorkProgress(session, asked.WorkDoneToken, "Looking at the plantings of this workspace", cancellation);
        foreach (var document in PlantingFiles.All(session, work))
        {
            try
            {
                var items = DiagnosticList.Of(document);
                var mark = MarkOf(items);
                int? version = session.IsNewest(document) ? document.Version : null;
                reports.Add(known[document.Key].Contains(mark) ? new("unchanged", document.Uri, version, mark) : new("full", document.Uri, version, mark, items));
            }
            catch (OperationCanceledException) when (!work.Ended.IsCancellationRequested)
            {
                // A newer text has come; the editor asks for it.
            }
        }

        return new([.. reports]);
    }

    /// <summary>The same for the same findings at the same places, and only then, as far as 64 bits can tell.</summary>
    private static string MarkOf(Diagnostic[] items)
    {
        // FNV-1a, offset basis and prime of 64 bits as in RFC 9923.
        var hash = 14695981039346656037UL;
        foreach (var unit in JsonSerializer.SerializeToUtf8Bytes(items, ProtocolContext.Default.DiagnosticArray))
        {
            hash = (hash ^ unit) * 1099511628211UL;
        }

        return hash.ToString("x16", CultureInfo.InvariantCulture);
    }
}
