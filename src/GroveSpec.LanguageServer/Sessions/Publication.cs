using GroveSpec.LanguageServer.Features.Diagnostics;
using GroveSpec.LanguageServer.Protocol;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>
/// Sends findings to the editor as texts change, each with the version it belongs to. An editor that asks for the findings
/// of a document itself is sent none of that document from then on, or it would show each twice.
/// </summary>
/// <param name="session">The editor's session.</param>
internal sealed class Publication(Session session)
{
    private const string Method = "textDocument/publishDiagnostics";

    private readonly Lock gate = new();
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);

    /// <summary>Looks at a text and sends what was found, unless a newer text comes first.</summary>
    /// <param name="document">The text.</param>
    public void Look(OpenDocument document) => _ = Task.Run(() => Send(document));

    /// <summary>Notes that the editor asks for a document's findings itself, and takes back what was sent.</summary>
    /// <param name="document">The document.</param>
    public void LeaveToEditor(OpenDocument document)
    {
        lock (gate)
        {
            if (asked.Add(document.Key))
            {
                Tell(new(document.Uri, [], document.Version));
            }
        }
    }

    /// <summary>Takes back what was sent of a document that was closed.</summary>
    /// <param name="document">The document.</param>
    public void Forget(OpenDocument document)
    {
        lock (gate)
        {
            if (!asked.Remove(document.Key))
            {
                Tell(new(document.Uri, []));
            }
        }
    }

    private void Send(OpenDocument document)
    {
        PublishDiagnosticsParams found;
        try
        {
            found = new(document.Uri, DiagnosticList.Of(document), document.Version);
        }
        catch (OperationCanceledException)
        {
            return;
        }
#pragma warning disable CA1031 // A fault while one text is looked at is one message; the next text is looked at again.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            found = new(document.Uri, [DiagnosticList.OfFault(fault)], document.Version);
        }

        lock (gate)
        {
            if (session.IsNewest(document) && !asked.Contains(document.Key))
            {
                Tell(found);
            }
        }

    }

    private void Tell(PublishDiagnosticsParams found) => session.Client.Notify(Method, found, ProtocolContext.Default.PublishDiagnosticsParams);
}
