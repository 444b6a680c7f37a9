using System.Text.Json;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.WorkspaceFiles;

/// <summary>Hears of files that change on the disk.</summary>
internal static class WatchedFiles
{
    /// <summary>Asks the editor to watch planting files, where it does so when asked.</summary>
    /// <param name="session">The session.</param>
    public static void Ask(Session session)
    {
        if (session.Capabilities.Workspace?.DidChangeWatchedFiles?.DynamicRegistration == true)
        {
            var options = JsonSerializer.SerializeToElement(new DidChangeWatchedFilesRegistrationOptions([new("**/*.grove")]), ProtocolContext.Default.DidChangeWatchedFilesRegistrationOptions);
            _ = session.Client.AskAsync("client/registerCapability", new RegistrationParams([new("planting-files", "workspace/didChangeWatchedFiles", options)]), ProtocolContext.Default.RegistrationParams);
        }
    }

    /// <summary>Looks again at what uses a file that has changed. The text of an open document is the editor's, whatever lies on the disk.</summary>
    /// <param name="session">The session.</param>
    /// <param name="changed">The files.</param>
    public static void Take(Session session, DidChangeWatchedFilesParams changed)
    {
        foreach (var file in changed.Changes)
        {
            if (session.Find(file.Uri) is null)
            {
                session.Recheck(DocumentAddress.KeyOf(file.Uri));
            }
        }

        // Also the findings of a file that nobody has open may be shown.
        session.Refreshing.Ask();
    }
}
