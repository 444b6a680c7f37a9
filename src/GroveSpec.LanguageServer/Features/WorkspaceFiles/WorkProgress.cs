using System.Text.Json;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.WorkspaceFiles;

/// <summary>A piece of work of which the editor is told how far it has come, where it asked to be told, and which the grower can call off.</summary>
internal sealed class WorkProgress : IDisposable
{
    private const string Method = "$/progress";

    private readonly Session session;
    private readonly JsonElement? token;
    private readonly CancellationTokenSource ended;

    /// <summary>Begins.</summary>
    /// <param name="session">The session.</param>
    /// <param name="token">The editor's token for it; null where it does not want to be told.</param>
    /// <param name="title">What is done.</param>
    /// <param name="cancellation">Ends the work as well.</param>
    public WorkProgress(Session session, JsonElement? token, string title, CancellationToken cancellation)
    {
        this.session = session;
        this.token = token is { ValueKind: JsonValueKind.String or JsonValueKind.Number } ? token : null;
        ended = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        if (this.token is { } known)
        {
            session.Works[known.GetRawText()] = ended;
        }

        Tell(new("begin", title, Cancellable: true));
    }

    /// <summary>Ends the work when nobody waits for it any more, or the grower has called it off.</summary>
    public CancellationToken Ended => ended.Token;

    /// <summary>Calls off a piece of work; nothing happens when it has ended already.</summary>
    /// <param name="session">The session.</param>
    /// <param name="calledOff">Which.</param>
    public static void CallOff(Session session, WorkDoneProgressCancelParams calledOff)
    {
        if (session.Works.TryGetValue(calledOff.Token.GetRawText(), out var work))
        {
            try
            {
                work.Cancel();
            }
            catch (ObjectDisposedException)
            {
                // It ended in this moment.
            }
        }
    }

    /// <summary>Tells what is looked at now.</summary>
    /// <param name="message">What it is.</param>
    public void Say(string message) => Tell(new("report", Message: message));

    /// <inheritdoc/>
    public void Dispose()
    {
        if (token is { } known)
        {
            session.Works.TryRemove(new(known.GetRawText(), ended));
        }

        ended.Dispose();
        Tell(new("end"));
    }

    private void Tell(WorkDoneProgress progress)
    {
        if (token is { } known)
        {
            session.Client.Notify(Method, new ProgressParams(known, progress), ProtocolContext.Default.ProgressParams);
        }
    }
}
