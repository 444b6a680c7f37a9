using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>
/// An editor for tests: frames messages itself, and waits for answers, never for time. It starts the program that
/// GROVESPEC_PROGRAM names, as the test command does with the native one; without it the server runs in the test's own process.
/// </summary>
internal sealed class EditorStandIn : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Stream writing;
    private readonly Stream answers;
    private readonly Process? process;
    private readonly ConcurrentDictionary<string, TaskCompletionSource<JsonObject>> waiting = new();
    private readonly BlockingCollection<JsonObject> told = [];
    private readonly SemaphoreSlim oneAtATime = new(1);
    private readonly Task<bool> server;
    private readonly Task reading;
    private int last;

    public EditorStandIn()
    {
        if (Environment.GetEnvironmentVariable("GROVESPEC_PROGRAM") is { Length: > 0 } program)
        {
            process = Process.Start(new ProcessStartInfo(program, ["language-server"]) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
            (writing, answers) = (process.StandardInput.BaseStream, process.StandardOutput.BaseStream);
            server = Task.Run(async () =>
            {
                while (await process.StandardError.ReadLineAsync() is { } line)
                {
                    Complaints.Enqueue(line);
                }

                await process.WaitForExitAsync();
                return process.ExitCode == 0;
            });
        }
        else
        {
            Pipe toServer = new(), fromServer = new();
            (writing, answers) = (toServer.Writer.AsStream(), fromServer.Reader.AsStream());
            server = Task.Run(async () =>
            {
                var isGood = await LanguageServerProgram.RunAsync(toServer.Reader.AsStream(), fromServer.Writer.AsStream(), "1.2.3", Complaints.Enqueue);
                await fromServer.Writer.CompleteAsync();
                return isGood;
            });
        }

        reading = Task.Run(ReadAsync);
    }

    /// <summary>What the server said on standard error.</summary>
    public ConcurrentQueue<string> Complaints { get; } = new();

    /// <summary>What the editor answers when it is asked; nothing at first.</summary>
    public Func<JsonObject, Task<JsonNode?>> Answering { get; set; } = _ => Task.FromResult<JsonNode?>(null);

    /// <summary>Whether the server thinks that the editor left as it should; waits until it has ended.</summary>
    public Task<bool> Ended => server.WaitAsync(Patience);

    public static async Task<EditorStandIn> StartAsync(JsonObject? capabilities = null, string? folder = null, JsonObject? options = null, Func<JsonObject, Task<JsonNode?>>? answering = null)
    {
        var editor = new EditorStandIn();
        if (answering is not null)
        {
            editor.Answering = answering;
        }

        await editor.AskAsync("initialize", new JsonObject
        {
            ["processId"] = null,
            ["rootUri"] = folder is null ? null : new Uri(folder).AbsoluteUri,
            ["capabilities"] = capabilities ?? [],
            ["initializationOptions"] = options,
        });
        await editor.TellAsync("initialized", new JsonObject());
        return editor;
    }

    public async Task<JsonNode?> AskAsync(string method, JsonNode? parameters)
    {
        var answer = await AnswerAsync(method, parameters);
        return answer["error"] is { } error ? throw new InvalidOperationException(error.ToJsonString()) : answer["result"];
    }

    public async Task<JsonObject> RefusedAsync(string method, JsonNode? parameters)
    {
        var answer = await AnswerAsync(method, parameters);
        return Assert.IsType<JsonObject>(answer["error"]);
    }

    public async Task<JsonObject> AnswerAsync(string method, JsonNode? parameters)
    {
        var id = Interlocked.Increment(ref last);
        var source = waiting[id.ToString(CultureInfo.InvariantCulture)] = new(TaskCreationOptions.RunContinuationsAsynchronously);
        await SendAsync(new JsonObject { ["jsonrpc"] = "2.0", ["id"] = id, ["method"] = method, ["params"] = parameters?.DeepClone() });
        return await source.Task.WaitAsync(Patience);
    }

    public Task TellAsync(string method, JsonNode? parameters) => SendAsync(new JsonObject { ["jsonrpc"] = "2.0", ["method"] = method, ["params"] = parameters?.DeepClone() });

    public Task OpenAsync(string uri, string text, int version = 1) => TellAsync("textDocument/didOpen", new JsonObject
    {
        ["textDocument"] = new JsonObject { ["uri"] = uri, ["languageId"] = "grovespec", ["version"] = version, ["text"] = text },
    });

    public Task ReplaceAsync(string uri, string text, int version) => TellAsync("textDocument/didChange", new JsonObject
    {
        ["textDocument"] = new JsonObject { ["uri"] = uri, ["version"] = version },
        ["contentChanges"] = new JsonArray(new JsonObject { ["text"] = text }),
    });

    /// <summary>The next findings that are sent for a document, of a version at least.</summary>
    public JsonObject Findings(string uri, int version)
    {
        while (told.TryTake(out var message, Patience))
        {
            if ((string?)message["method"] == "textDocument/publishDiagnostics" && (string?)message["params"]!["uri"] == uri && ((int?)message["params"]!["version"] ?? int.MaxValue) >= version)
            {
                return message["params"]!.AsObject();
            }
        }

        throw new TimeoutException("No findings came.");
    }

    /// <summary>The next message, of whatever method.</summary>
    public JsonObject NextOfAll() => told.TryTake(out var message, Patience) ? message : throw new TimeoutException("No message came.");

    /// <summary>All messages that came and were not taken, once the server has ended.</summary>
    public IEnumerable<JsonObject> Rest() => told.GetConsumingEnumerable();

    /// <summary>The next message of a method.</summary>
    public JsonObject Next(string method)
    {
        while (told.TryTake(out var message, Patience))
        {
            if ((string?)message["method"] == method)
            {
                return message;
            }
        }

        throw new TimeoutException($"No {method} came.");
    }

    /// <summary>Sends bytes as they are.</summary>
    public async Task SendRawAsync(byte[] bytes)
    {
        await oneAtATime.WaitAsync();
        try
        {
            await writing.WriteAsync(bytes);
            await writing.FlushAsync();
        }
        finally
        {
            oneAtATime.Release();
        }
    }

    public static byte[] Framed(string body) => [.. Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"Content-Length: {Encoding.UTF8.GetByteCount(body)}\r\n\r\n")), .. Encoding.UTF8.GetBytes(body)];

    public async Task LeaveAsync()
    {
        await AskAsync("shutdown", null);
        await TellAsync("exit", null);
    }

    /// <summary>Closes the editor's end without a word.</summary>
    public async Task VanishAsync() => await writing.DisposeAsync();

    public async ValueTask DisposeAsync()
    {
        try
        {
            await writing.DisposeAsync();
        }
        catch (IOException)
        {
            // The server has closed its end already.
        }

        await server.WaitAsync(Patience);
        await reading.WaitAsync(Patience);
        told.Dispose();
        oneAtATime.Dispose();
        process?.Dispose();
    }

    private async Task SendAsync(JsonObject message) => await SendRawAsync(Framed(message.ToJsonString()));

    private async Task ReplyAsync(JsonObject asked, JsonNode id)
    {
        var answer = await Answering(asked);
        try
        {
            await SendAsync(new JsonObject { ["jsonrpc"] = "2.0", ["id"] = id, ["result"] = answer });
        }
        catch (Exception gone) when (gone is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // The test has ended meanwhile.
        }
    }

    private async Task ReadAsync()
    {
        var header = new StringBuilder();
        var unit = new byte[1];
        while (await answers.ReadAsync(unit) == 1)
        {
            header.Append((char)unit[0]);
            if (header.Length < 4 || !header.ToString().EndsWith("\r\n\r\n", StringComparison.Ordinal))
            {
                continue;
            }

            var length = header.ToString().Split("\r\n").First(line => line.StartsWith("Content-Length:", StringComparison.OrdinalIgnoreCase)).Split(':')[1];
            var body = new byte[int.Parse(length, CultureInfo.InvariantCulture)];
            await answers.ReadExactlyAsync(body);
            header.Clear();
            var message = JsonNode.Parse(body)!.AsObject();
            if (message["method"] is null)
            {
                if (waiting.TryRemove(message["id"]?.ToString() ?? "null", out var source))
                {
                    source.SetResult(message);
                }
                else
                {
                    told.Add(new JsonObject { ["method"] = "answer to nobody", ["params"] = message.DeepClone() });
                }
            }
            else
            {
                if (message["id"] is { } id)
                {
                    _ = ReplyAsync(message.DeepClone().AsObject(), id.DeepClone());
                }

                told.Add(message);
            }
        }

        told.CompleteAdding();
    }
}
