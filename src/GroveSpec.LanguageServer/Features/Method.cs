using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;

namespace GroveSpec.LanguageServer.Features;

/// <summary>Makes methods of the protocol out of functions: reads their parameters, runs them on the newest text, and writes their answers. How a type is read is worked out when its first message comes, so that starting up costs nothing.</summary>
internal static class Method
{
    /// <summary>A notification, or a request answered at once: messages behind it wait.</summary>
    /// <typeparam name="TParameters">What it takes.</typeparam>
    /// <param name="shape">How that is read.</param>
    /// <param name="take">What it does.</param>
    /// <returns>The method.</returns>
    public static Func<JsonElement?, CancellationToken, Task<JsonElement?>> Told<TParameters>(Func<JsonTypeInfo<TParameters>> shape, Action<TParameters> take) => (parameters, _) =>
    {
        take(Read(parameters, shape()));
        return Task.FromResult<JsonElement?>(null);
    };

    /// <summary>A request that is worked on beside others.</summary>
    /// <typeparam name="TParameters">What it takes.</typeparam>
    /// <typeparam name="TResult">What it answers.</typeparam>
    /// <param name="shape">How its parameters are read.</param>
    /// <param name="resultShape">How its answer is written.</param>
    /// <param name="answer">What answers it; null is an answer.</param>
    /// <returns>The method.</returns>
    public static Func<JsonElement?, CancellationToken, Task<JsonElement?>> Asked<TParameters, TResult>(Func<JsonTypeInfo<TParameters>> shape, Func<JsonTypeInfo<TResult>> resultShape, Func<TParameters, CancellationToken, TResult?> answer)
        where TResult : class => async (parameters, cancellation) =>
    {
        var asked = Read(parameters, shape());
        try
        {
            return await Task.Run(() => answer(asked, cancellation) is { } result ? JsonSerializer.SerializeToElement(result, resultShape()) : (JsonElement?)null, cancellation).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            throw CalledOff();
        }
    };

    /// <summary>A request about a document, answered from its newest text; an answer for a text that has changed meanwhile is thrown away.</summary>
    /// <typeparam name="TParameters">What it takes.</typeparam>
    /// <typeparam name="TResult">What it answers.</typeparam>
    /// <param name="session">The session.</param>
    /// <param name="shape">How its parameters are read.</param>
    /// <param name="resultShape">How its answer is written.</param>
    /// <param name="uri">Which document it is about.</param>
    /// <param name="answer">What answers it; null is an answer.</param>
    /// <returns>The method. It answers null for a document that is not open.</returns>
    public static Func<JsonElement?, CancellationToken, Task<JsonElement?>> OfDocument<TParameters, TResult>(
        Session session,
        Func<JsonTypeInfo<TParameters>> shape,
        Func<JsonTypeInfo<TResult>> resultShape,
        Func<TParameters, string> uri,
        Func<OpenDocument, TParameters, CancellationToken, TResult?> answer)
        where TResult : class => async (parameters, cancellation) =>
    {
        var asked = Read(parameters, shape());
        if (session.Find(uri(asked)) is not { } document)
        {
            return null;
        }

        using var ended = CancellationTokenSource.CreateLinkedTokenSource(cancellation, document.Overtaken);
        try
        {
            var result = await Task.Run(() => answer(document, asked, ended.Token) is { } found ? JsonSerializer.SerializeToElement(found, resultShape()) : (JsonElement?)null, ended.Token).ConfigureAwait(false);
            return session.IsNewest(document) ? result : throw Overtaken();
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            throw document.Overtaken.IsCancellationRequested ? Overtaken() : CalledOff();
        }
    };

    /// <summary>Reads parameters.</summary>
    /// <typeparam name="TParameters">What they are.</typeparam>
    /// <param name="parameters">What came.</param>
    /// <param name="shape">How they are read.</param>
    /// <returns>The parameters.</returns>
    /// <exception cref="RequestException">They are not what the method takes.</exception>
    public static TParameters Read<TParameters>(JsonElement? parameters, JsonTypeInfo<TParameters> shape)
    {
        try
        {
            return (parameters is { } given ? given.Deserialize(shape) : default) ?? throw new RequestException(RequestException.InvalidParameters, "The message has no parameters, and it needs some.");
        }
        catch (JsonException wrong)
        {
            throw new RequestException(RequestException.InvalidParameters, $"The parameters are not those of this method: {wrong.Message}");
        }
    }

    private static RequestException CalledOff() => new(RequestException.RequestCancelled, "This was called off.");

    private static RequestException Overtaken() => new(RequestException.ContentModified, "The text has changed since this was asked.");
}
