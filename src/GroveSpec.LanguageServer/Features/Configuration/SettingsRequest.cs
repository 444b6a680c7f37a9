using System.Text.Json;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.Configuration;

/// <summary>Asks the editor what the grower has chosen, for the window and for each folder that is open.</summary>
internal static class SettingsRequest
{
    private const string Section = "grovespec";
    private const string Changed = "workspace/didChangeConfiguration";

    /// <summary>Asks to be told of changes, where the editor tells of them only when asked.</summary>
    /// <param name="session">The session.</param>
    public static void AskForChanges(Session session)
    {
        if (session.Capabilities.Workspace?.DidChangeConfiguration?.DynamicRegistration == true)
        {
            _ = session.Client.AskAsync("client/registerCapability", new RegistrationParams([new("settings", Changed)]), ProtocolContext.Default.RegistrationParams);
        }
    }

    /// <summary>Asks for the settings. An editor that cannot be asked has said them when it began.</summary>
    /// <param name="session">The session.</param>
    public static void Ask(Session session)
    {
        if (session.Capabilities.Workspace?.Configuration == true)
        {
            _ = AskAsync(session, null);
        }
    }

    /// <summary>Hears that settings have changed. What the message says of them holds for the whole window, so an editor that can be asked is.</summary>
    /// <param name="session">The session.</param>
    /// <param name="changed">What is said of them.</param>
    public static void Take(Session session, DidChangeConfigurationParams changed)
    {
        if (session.Capabilities.Workspace?.Configuration == true)
        {
            _ = AskAsync(session, changed.Settings);
        }
        else
        {
            session.Choose(session.NextChoice(), new(ServerSettings.Read(changed.Settings)));
        }
    }

    private static async Task AskAsync(Session session, JsonElement? said)
    {
        var choice = session.NextChoice();
        var folders = session.Folders;
        var asked = new ConfigurationParams([new(Section: Section), .. folders.Select(folder => new ConfigurationItem(DocumentAddress.UriOf(folder), Section))]);
        var answer = await session.Client.AskAsync("workspace/configuration", asked, ProtocolContext.Default.ConfigurationParams).ConfigureAwait(false);
        if (answer is { ValueKind: JsonValueKind.Array } all && all.GetArrayLength() == asked.Items.Length)
        {
            var window = Read(all[0], session.Settings.Window);
            session.Choose(choice, new(window, [.. folders.Select((folder, index) => (folder, Read(all[index + 1], window)))]));
        }
        else if (said is { ValueKind: JsonValueKind.Object } known)
        {
            session.Choose(choice, new(ServerSettings.Read(known)));
        }
    }

    private static ServerSettings Read(JsonElement answer, ServerSettings otherwise) => answer.ValueKind == JsonValueKind.Object ? ServerSettings.Read(answer) : otherwise;
}
