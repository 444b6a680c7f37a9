using System.Diagnostics;
using GroveSpec.LanguageServer.Features;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;

namespace GroveSpec.LanguageServer;

/// <summary>The language server as a program over two streams.</summary>
public static class LanguageServerProgram
{
    private const int Warning = 2;
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromSeconds(2);

    /// <summary>Answers an editor until it leaves.</summary>
    /// <param name="input">What the editor writes.</param>
    /// <param name="output">What the editor reads.</param>
    /// <param name="version">The program's version, as the editor shows it.</param>
    /// <param name="tell">Takes a sentence for the person at the other end of standard error.</param>
    /// <returns>Whether the editor left as the protocol has it: it said shutdown first, and sent nothing that could not be read.</returns>
    public static async Task<bool> RunAsync(Stream input, Stream output, string version, Action<string> tell)
    {
        ArgumentNullException.ThrowIfNull(tell);
        using var ended = new CancellationTokenSource();
        using var connection = new ServerConnection(input, output);
        using var session = new Session(connection);
        var methods = new ServerMethods(session, version, ended.Cancel);
        using var watch = new Timer(_ => LeaveWithEditor(session, ended), null, BetweenLooks, BetweenLooks);
        await connection.RunAsync(
            methods.All().Select(method => new Route(method.Name, method.Answer, (name, fault) => Report(session, name, fault))),
            ended.Token).ConfigureAwait(false);
        if (connection.Trouble is { } trouble)
        {
            tell($"The editor sent what cannot be read, so the language server ends: {trouble}");
        }

        return session.IsShutDown && connection.Trouble is null;
    }

    /// <summary>An editor that died without a word may leave its end of the streams open in another process.</summary>
    private static void LeaveWithEditor(Session session, CancellationTokenSource ended)
    {
        if (session.EditorProcess is not { } process)
        {
            return;
        }

        try
        {
            using var editor = Process.GetProcessById(process);
            if (!editor.HasExited)
            {
                return;
            }
        }
        catch (Exception gone) when (gone is ArgumentException or InvalidOperationException)
        {
            // There is no such process any more.
        }
        catch (System.ComponentModel.Win32Exception)
        {
            // It is there, and may not be looked at.
            return;
        }

        ended.Cancel();
    }

    private static void Report(Session session, string method, Exception fault) => session.Client.Notify(
        "window/logMessage",
        new LogMessageParams(Warning, $"{method} failed: {fault}"),
        ProtocolContext.Default.LogMessageParams);
}
