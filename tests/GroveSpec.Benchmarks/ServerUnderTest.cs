using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace GroveSpec.Benchmarks;

/// <summary>A language server as a process, asked one thing after the other.</summary>
internal sealed class ServerUnderTest : IDisposable
{
    private readonly Process process;
    private readonly Stream writing;
    private readonly Stream reading;
    private int last;

    /// <summary>Starts a server.</summary>
    /// <param name="program">Its program.</param>
    /// <param name="words">The words of its command line.</param>
    public ServerUnderTest(string program, string[] words)
    {
        process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
        process.ErrorDataReceived += static (_, _) => { };
        process.BeginErrorReadLine();
        (writing, reading) = (process.StandardInput.BaseStream, process.StandardOutput.BaseStream);
    }

    /// <summary>The memory it holds now, in megabytes.</summary>
    public double MegabytesNow => Status("VmRSS:");

    /// <summary>The most memory it ever held, in megabytes.</summary>
    public double MegabytesAtMost => Status("VmHWM:");

    /// <summary>Says hello and waits for the answer.</summary>
    /// <param name="folder">The folder that is open.</param>
    public void Initialize(string folder) =>
        Ask("initialize", new { processId = (int?)null, rootUri = new Uri(folder).AbsoluteUri, capabilities = new { textDocument = new { publishDiagnostics = new { versionSupport = true } } } });

    /// <summary>Opens a document and waits for its findings.</summary>
    /// <param name="uri">Its address.</param>
    /// <param name="language">Its language.</param>
    /// <param name="text">Its text.</param>
    public void Open(string uri, string language, string text)
    {
        Tell("initialized", new { });
        Tell("textDocument/didOpen", new { textDocument = new { uri, languageId = language, version = 1, text } });
        WaitForFindings();
    }

    /// <summary>Changes a run of a line.</summary>
    /// <param name="uri">The document.</param>
    /// <param name="version">The version of the new text.</param>
    /// <param name="line">The line, from 0.</param>
    /// <param name="start">Where the run begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="text">What comes in its place.</param>
    public void Change(string uri, int version, int line, int start, int end, string text) => Tell(
        "textDocument/didChange",
        new { textDocument = new { uri, version }, contentChanges = new[] { new { range = new { start = new { line, character = start }, end = new { line, character = end } }, text } } });

    /// <summary>Waits for findings, of a version where the server says one.</summary>
    /// <param name="version">The version waited for at least.</param>
    public void WaitForFindings(int version = 0)
    {
        while (true)
        {
            using var message = Read();
            if (message.RootElement.TryGetProperty("method", out var method) && method.GetString() == "textDocument/publishDiagnostics"
                && (!message.RootElement.GetProperty("params").TryGetProperty("version", out var said) || said.ValueKind != JsonValueKind.Number || said.GetInt32() >= version))
            {
                return;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        process.Kill();
        process.WaitForExit();
        process.Dispose();
    }

    private void Ask(string method, object parameters)
    {
        var id = ++last;
        Send(new { jsonrpc = "2.0", id, method, @params = parameters });
        while (true)
        {
            using var message = Read();
            if (!message.RootElement.TryGetProperty("method", out _) && message.RootElement.TryGetProperty("id", out var answered) && answered.ValueKind == JsonValueKind.Number && answered.GetInt32() == id)
            {
                return;
            }
        }
    }

    private void Tell(string method, object parameters) => Send(new { jsonrpc = "2.0", method, @params = parameters });

    private void Send(object message)
    {
        var bytes = JsonSerializer.SerializeToUtf8Bytes(message);
        writing.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"Content-Length: {bytes.Length}\r\n\r\n")));
        writing.Write(bytes);
        writing.Flush();
    }

    /// <summary>The next message; what the server asks of its editor is answered with nothing at once.</summary>
    private JsonDocument Read()
    {
        var head = new StringBuilder();
        while (!head.ToString().EndsWith("\r\n\r\n", StringComparison.Ordinal))
        {
            var unit = reading.ReadByte();
            head.Append(unit >= 0 ? (char)unit : throw new InvalidOperationException("The server has ended."));
        }

        var length = head.ToString().Split("\r\n").First(line => line.StartsWith("Content-Length:", StringComparison.OrdinalIgnoreCase)).Split(':')[1];
        var body = new byte[int.Parse(length, CultureInfo.InvariantCulture)];
        reading.ReadExactly(body);
        var message = JsonDocument.Parse(body);
        if (message.RootElement.TryGetProperty("method", out _) && message.RootElement.TryGetProperty("id", out var id))
        {
            Send(new { jsonrpc = "2.0", id, result = (object?)null });
        }

        return message;
    }

    private double Status(string name)
    {
        var line = File.ReadLines(string.Create(CultureInfo.InvariantCulture, $"/proc/{process.Id}/status")).First(line => line.StartsWith(name, StringComparison.Ordinal));
        return double.Parse(line[name.Length..].Replace("kB", "", StringComparison.Ordinal), CultureInfo.InvariantCulture) / 1024;
    }
}
