using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using StreamJsonRpc;
using StreamJsonRpc.Protocol;

namespace GroveSpec.LanguageServer.Transport;

/// <summary>Reads and writes messages as JSON. A message that is no JSON becomes a request that is refused, so that the next one is still read.</summary>
internal sealed class MessageFormatter : IJsonRpcMessageTextFormatter, IJsonRpcInstanceContainer, IDisposable
{
    /// <summary>The method that stands for a message which could not be read.</summary>
    public const string Unreadable = "$/unreadable";

    private const int DeepestMessage = 64;

    private readonly SystemTextJsonFormatter inner = Make();

    /// <inheritdoc/>
    public System.Text.Encoding Encoding
    {
        get => inner.Encoding;
        set => inner.Encoding = value;
    }

    /// <inheritdoc/>
    JsonRpc IJsonRpcInstanceContainer.Rpc
    {
        set => ((IJsonRpcInstanceContainer)inner).Rpc = value;
    }

    /// <summary>What stands for a message that could not be read.</summary>
    /// <returns>A request without a number, which is answered with a refusal.</returns>
    public static JsonRpcMessage NoMessage() => new JsonRpcRequest { RequestId = RequestId.Null, Method = Unreadable };

    /// <inheritdoc/>
    public JsonRpcMessage Deserialize(ReadOnlySequence<byte> contentBuffer) => Deserialize(contentBuffer, Encoding);

    /// <inheritdoc/>
    public JsonRpcMessage Deserialize(ReadOnlySequence<byte> contentBuffer, System.Text.Encoding encoding)
    {
#pragma warning disable CA1031 // Whatever is wrong with a message, it is one message.
        try
        {
            return inner.Deserialize(contentBuffer, encoding);
        }
        catch (Exception)
        {
            return NoMessage();
        }
#pragma warning restore CA1031
    }

    /// <inheritdoc/>
    public void Serialize(IBufferWriter<byte> bufferWriter, JsonRpcMessage message) => inner.Serialize(bufferWriter, message);

    /// <inheritdoc/>
    public object GetJsonText(JsonRpcMessage message) => inner.GetJsonText(message);

    /// <inheritdoc/>
    public void Dispose() => inner.Dispose();

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Only JsonElement crosses it, whose shape is given; the library's own envelopes it writes by hand.")]
    [UnconditionalSuppressMessage("AOT", "IL3050", Justification = "The same.")]
    private static SystemTextJsonFormatter Make() => new()
    {
        JsonSerializerOptions = new JsonSerializerOptions
        {
            TypeInfoResolver = EnvelopeContext.Default,
            MaxDepth = DeepestMessage,
        },
    };
}
