namespace GroveSpec.LanguageServer.Sessions;

/// <summary>
/// Asks the editor to ask again for what it shows of its documents, where that can have changed though their texts did not: a file
/// that they use, or the settings. Of each kind one request is under way at most; what comes meanwhile is asked once, after it.
/// </summary>
/// <param name="session">The editor's session.</param>
internal sealed class Refreshing(Session session)
{
    private readonly Lock gate = new();
    private bool isUnderWay;
    private bool isWanted;

    /// <summary>Asks for all that the editor takes such requests for.</summary>
    public void Ask()
    {
        lock (gate)
        {
            isWanted = true;
            if (isUnderWay)
            {
                return;
            }

            isUnderWay = true;
        }

        _ = Task.Run(AskWhileWantedAsync);
    }

    private async Task AskWhileWantedAsync()
    {
        while (IsStillWanted())
        {
            await Task.WhenAll(Methods().Select(method => session.Client.AskAsync<object>(method, null, null))).ConfigureAwait(false);
        }
    }

    private bool IsStillWanted()
    {
        lock (gate)
        {
            (isUnderWay, isWanted) = (isWanted, false);
            return isUnderWay;
        }
    }

    private IEnumerable<string> Methods()
    {
        if (session.Capabilities.Workspace is not { } workspace)
        {
            yield break;
        }

        if (workspace.Diagnostics?.RefreshSupport == true)
        {
            yield return "workspace/diagnostic/refresh";
        }

        if (workspace.SemanticTokens?.RefreshSupport == true)
        {
            yield return "workspace/semanticTokens/refresh";
        }

        if (workspace.InlayHint?.RefreshSupport == true)
        {
            yield return "workspace/inlayHint/refresh";
        }

        if (workspace.CodeLens?.RefreshSupport == true)
        {
            yield return "workspace/codeLens/refresh";
        }
    }
}
