using System.Diagnostics.CodeAnalysis;

namespace GroveSpec.LanguageServer.Transport;

/// <summary>A request that is refused with a code of the protocol and a sentence.</summary>
[SuppressMessage("Design", "CA1064", Justification = "It never leaves the server: the route turns it into an answer.")]
internal sealed class RequestException : Exception
{
    /// <summary>The parameters are not what the method takes.</summary>
    public const int InvalidParameters = -32602;

    /// <summary>The request is not allowed at this time.</summary>
    public const int InvalidRequest = -32600;

    /// <summary>A message was no JSON.</summary>
    public const int ParseError = -32700;

    /// <summary>Something in the server itself went wrong.</summary>
    public const int InternalError = -32603;

    /// <summary>The server was not initialized yet.</summary>
    public const int NotInitialized = -32002;

    /// <summary>The grower has called the work off.</summary>
    public const int RequestCancelled = -32800;

    /// <summary>The text has changed since the request was sent.</summary>
    public const int ContentModified = -32801;

    /// <summary>The request was sound and cannot be met, such as a name that cannot be given.</summary>
    public const int RequestFailed = -32803;

    /// <summary>Makes one.</summary>
    /// <param name="code">The protocol's code.</param>
    /// <param name="message">A sentence that says why.</param>
    public RequestException(int code, string message)
        : base(message) => Code = code;

    /// <summary>The protocol's code.</summary>
    public int Code { get; }
}
