using System.Buffers;
using System.Buffers.Text;
using System.Text;
using StreamJsonRpc;
using StreamJsonRpc.Protocol;

namespace GroveSpec.LanguageServer.Transport;

/// <summary>Looks at the head of each message before its body is waited for, so that a length nobody can mean ends the reading instead of filling the memory.</summary>
/// <param name="output">What the editor reads.</param>
/// <param name="input">What the editor writes.</param>
/// <param name="formatter">Reads and writes bodies.</param>
internal sealed class GuardedMessageHandler(Stream output, Stream input, IJsonRpcMessageFormatter formatter) : HeaderDelimitedMessageHandler(output, input, formatter)
{
    /// <summary>The longest body that is read, in bytes: many times the longest text that the language takes.</summary>
    private const int LongestBody = 64 * 1024 * 1024;

    private const int LongestHead = 8 * 1024;

    /// <inheritdoc/>
    protected override async ValueTask<JsonRpcMessage?> ReadCoreAsync(CancellationToken cancellationToken)
    {
        // To the library a message without a body is the end of all messages.
        return await IsEmptyAsync(cancellationToken).ConfigureAwait(false)
            ? MessageFormatter.NoMessage()
            : await base.ReadCoreAsync(cancellationToken).ConfigureAwait(false);
    }

    /// <summary>Looks at the head of the next message; one that announces no body is read past.</summary>
    private async ValueTask<bool> IsEmptyAsync(CancellationToken cancellationToken)
    {
        while (Reader is { } reader)
        {
            var reading = await reader.ReadAsync(cancellationToken).ConfigureAwait(false);
            var head = reading.Buffer.Slice(0, Math.Min(reading.Buffer.Length, LongestHead)).ToArray();
            var end = head.AsSpan().IndexOf("\r\n\r\n"u8);
            var isWhole = end >= 0 || reading.IsCompleted || reading.IsCanceled || reading.Buffer.Length >= LongestHead;
            if (!isWhole)
            {
                reader.AdvanceTo(reading.Buffer.Start, reading.Buffer.End);
                continue;
            }

            var isEmpty = LengthOf(end >= 0 ? head.AsSpan(0, end) : head, end >= 0, reading.IsCompleted || reading.IsCanceled) == 0;
            reader.AdvanceTo(isEmpty ? reading.Buffer.GetPosition(end + 4) : reading.Buffer.Start);
            return isEmpty;
        }

        return false;
    }

    private static long? LengthOf(ReadOnlySpan<byte> head, bool hasEnd, bool isOver)
    {
        if (!hasEnd)
        {
            if (!isOver)
            {
                throw new BadRpcHeaderException($"A message begins with more than {LongestHead} bytes of head.");
            }

            return null;
        }

        foreach (var line in Encoding.ASCII.GetString(head).Split("\r\n"))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon < 0 || !line.AsSpan(0, colon).Trim().Equals("Content-Length", StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            var number = Encoding.ASCII.GetBytes(line[(colon + 1)..].Trim());
            if (!Utf8Parser.TryParse(number, out long length, out var used) || used != number.Length || length is < 0 or > LongestBody)
            {
                throw new BadRpcHeaderException($"A message says that it has {line[(colon + 1)..].Trim()} bytes; from 0 to {LongestBody} are read.");
            }

            return length;
        }

        throw new BadRpcHeaderException("A message does not say in Content-Length how many bytes it has.");
    }
}
