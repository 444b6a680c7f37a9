using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using StreamJsonRpc;

namespace GroveSpec.LanguageServer.Transport;

/// <summary>Carries messages between the server and an editor over two streams. The only part that knows the library.</summary>
internal sealed class ServerConnection : IClient, IDisposable
{
    private readonly JsonRpc rpc;
    private readonly MessageFormatter formatter;

    /// <summary>Makes one; nothing is read before <see cref="RunAsync"/>.</summary>
    /// <param name="input">What the editor writes.</param>
    /// <param name="output">What the editor reads.</param>
    public ServerConnection(Stream input, Stream output)
    {
        formatter = new MessageFormatter();
#pragma warning disable CA2000 // The connection ends the handler with itself.
        rpc = new JsonRpc(new GuardedMessageHandler(output, input, formatter)) { CancelLocallyInvokedMethodsWhenConnectionIsClosed = true };
#pragma warning restore CA2000
    }

    /// <summary>Why the editor's messages could not be read any further; null when it ended as it should.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Answers until the editor closes its end or sends what cannot be read.</summary>
    /// <param name="routes">The methods.</param>
    /// <param name="ended">Ends it from the server's side.</param>
    /// <returns>When it has ended.</returns>
    public async Task RunAsync(IEnumerable<Route> routes, CancellationToken ended)
    {
        foreach (var route in routes)
        {
            rpc.AddLocalRpcMethod(Route.Entry, route, new JsonRpcMethodAttribute(route.Method) { UseSingleObjectParameterDeserialization = true });
        }

        rpc.Disconnected += (_, gone) =>
        {
            if (gone.Reason is not (DisconnectedReason.LocallyDisposed or DisconnectedReason.RemotePartyTerminated))
            {
                Trouble = gone.Exception is null ? gone.Description : $"{gone.Description} {gone.Exception.Message}";
            }
        };
        rpc.StartListening();

        // Reading from a terminal or a pipe cannot be called off, so the end from the server's side does not wait for it.
        var leaving = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        using var registration = ended.Register(leaving.SetResult);
#pragma warning disable VSTHRD003 // The task is the connection's own.
        await Task.WhenAny(rpc.Completion, leaving.Task).ConfigureAwait(false);
#pragma warning restore VSTHRD003
    }

    /// <inheritdoc/>
    public void Notify<TParameters>(string method, TParameters parameters, JsonTypeInfo<TParameters> shape)
    {
        if (!rpc.IsDisposed)
        {
            _ = TellAsync(method, JsonSerializer.SerializeToElement(parameters, shape));
        }
    }

    /// <inheritdoc/>
    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Only JsonElement crosses the library, and EnvelopeContext holds its shape.")]
    [UnconditionalSuppressMessage("AOT", "IL3050", Justification = "The same.")]
    public async Task<JsonElement?> AskAsync<TParameters>(string method, TParameters? parameters, JsonTypeInfo<TParameters>? shape)
    {
#pragma warning disable CA1031 // An editor that refuses, or is gone, is no fault of the server.
        try
        {
            return await rpc.InvokeWithParameterObjectAsync<JsonElement?>(method, shape is null ? null : JsonSerializer.SerializeToElement(parameters!, shape)).ConfigureAwait(false);
        }
        catch (Exception)
        {
            return null;
        }
#pragma warning restore CA1031
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        rpc.Dispose();
        formatter.Dispose();
    }

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Only JsonElement crosses the library, and EnvelopeContext holds its shape.")]
    [UnconditionalSuppressMessage("AOT", "IL3050", Justification = "The same.")]
    private async Task TellAsync(string method, JsonElement parameters)
    {
        try
        {
            await rpc.NotifyWithParameterObjectAsync(method, parameters).ConfigureAwait(false);
        }
        catch (Exception gone) when (gone is ConnectionLostException or ObjectDisposedException or IOException)
        {
            // There is nobody left to tell.
        }
    }
}
