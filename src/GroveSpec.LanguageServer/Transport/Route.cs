using System.Reflection;
using System.Text.Json;
using StreamJsonRpc;

namespace GroveSpec.LanguageServer.Transport;

/// <summary>One method of the protocol and what answers it. The library calls it; all else of the server does not know the library.</summary>
/// <param name="method">The method's name in the protocol.</param>
/// <param name="answer">What answers it.</param>
/// <param name="report">Takes a fault of the server itself, for its log.</param>
internal sealed class Route(string method, Func<JsonElement?, CancellationToken, Task<JsonElement?>> answer, Action<string, Exception> report)
{
    /// <summary>The method that the library is to call. Named here so that a native program keeps it.</summary>
    public static MethodInfo Entry { get; } = typeof(Route).GetMethod(nameof(AnswerAsync))!;

    /// <summary>The method's name in the protocol.</summary>
    public string Method => method;

    /// <summary>Answers a request, or takes a notification.</summary>
    /// <param name="parameters">The parameters as they came; null where there were none.</param>
    /// <param name="cancellation">Ends the work when nobody waits for it any more.</param>
    /// <returns>The answer.</returns>
    /// <exception cref="LocalRpcException">The request was refused, or failed.</exception>
    public async Task<JsonElement?> AnswerAsync(JsonElement? parameters = null, CancellationToken cancellation = default)
    {
        try
        {
            return await answer(parameters, cancellation).ConfigureAwait(false);
        }
        catch (RequestException refused)
        {
            throw new LocalRpcException(refused.Message) { ErrorCode = refused.Code };
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // One fault in one request is one message; the others go on.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            report(method, fault);
            throw new LocalRpcException($"Something went wrong inside GroveSpec while it answered {method} ({fault.GetType().Name}). It is not your file's fault; all else goes on.") { ErrorCode = RequestException.InternalError };
        }
    }
}
