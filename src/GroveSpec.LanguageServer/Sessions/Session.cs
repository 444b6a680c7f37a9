using System.Collections.Concurrent;
using System.Collections.Immutable;
using GroveSpec.LanguageServer.Features.SemanticTokenizing;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Transport;
using GroveSpec.Syntax.Text;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>What the server knows of one editor: its documents, folders and settings. Changed by messages, one after the other, and by the editor's answers about its settings, which may come at any time.</summary>
internal sealed class Session : IDisposable
{
    private readonly Lock gate = new();
    private readonly SessionFiles files;
    private ImmutableDictionary<string, OpenDocument> documents = ImmutableDictionary.Create<string, OpenDocument>(StringComparer.Ordinal);
    private int choices;

    /// <summary>Makes one for an editor.</summary>
    /// <param name="client">The editor.</param>
    public Session(IClient client)
    {
        Client = client;
        files = new(key => documents.GetValueOrDefault(key)?.Text);
        Publication = new(this);
        Refreshing = new(this);
    }

    /// <summary>The editor.</summary>
    public IClient Client { get; }

    /// <summary>Sends findings to the editor.</summary>
    public Publication Publication { get; }

    /// <summary>Asks the editor to ask again.</summary>
    public Refreshing Refreshing { get; }

    /// <summary>What the grower can call off, by the editor's token for it as JSON.</summary>
    public ConcurrentDictionary<string, CancellationTokenSource> Works { get; } = new(StringComparer.Ordinal);

    /// <summary>What was last told of the words of each document.</summary>
    public TokenCache Tokens { get; } = new();

    /// <summary>What the editor can do.</summary>
    public ClientCapabilities Capabilities { get; private set; } = new();

    /// <summary>The number of the editor's process; null where it did not say.</summary>
    public int? EditorProcess { get; private set; }

    /// <summary>Whether the editor has said hello.</summary>
    public bool IsInitialized { get; private set; }

    /// <summary>Whether the editor has said that it will leave.</summary>
    public bool IsShutDown { get; private set; }

    /// <summary>Whether the editor counts bytes of UTF-8.</summary>
    public bool IsUtf8 { get; private set; }

    /// <summary>What the grower has chosen.</summary>
    public ChosenSettings Settings { get; private set; } = new(new ServerSettings());

    /// <summary>The folders that are open, by full path.</summary>
    public ImmutableArray<string> Folders { get; private set; } = [];

    /// <summary>The documents that are open, sorted by path.</summary>
    public ImmutableArray<OpenDocument> Documents => [.. documents.Values.OrderBy(document => document.Key, StringComparer.Ordinal)];

    /// <summary>Takes what the editor says of itself.</summary>
    /// <param name="hello">What it says.</param>
    public void Begin(InitializeParams hello)
    {
        Capabilities = hello.Capabilities;
        EditorProcess = hello.ProcessId;
        IsUtf8 = hello.Capabilities.General?.PositionEncodings?.FirstOrDefault(encoding => encoding is "utf-8" or "utf-16") == "utf-8";
        Settings = new(ServerSettings.Read(hello.InitializationOptions));
        Folders = hello.WorkspaceFolders is { } several ? PathsOf(several) : hello.RootUri is { } root && DocumentAddress.PathOf(root) is { } path ? [FolderOf(path)] : [];
        IsInitialized = true;
    }

    /// <summary>Takes the editor's word that it will leave.</summary>
    public void ShutDown() => IsShutDown = true;

    /// <summary>Adds folders and takes others away.</summary>
    /// <param name="change">Which.</param>
    public void ChangeFolders(WorkspaceFoldersChangeEvent change)
    {
        var removed = PathsOf(change.Removed);
        Folders = [.. Folders.Where(folder => !removed.Contains(folder)).Concat(PathsOf(change.Added)).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>Numbers what the grower chooses, so that an answer that comes late changes nothing.</summary>
    /// <returns>The number for <see cref="Choose"/>.</returns>
    public int NextChoice() => Interlocked.Increment(ref choices);

    /// <summary>Takes settings; every document for which they differ from those before is looked at again.</summary>
    /// <param name="choice">Its number; nothing happens when a newer one is awaited.</param>
    /// <param name="settings">The settings.</param>
    public void Choose(int choice, ChosenSettings settings)
    {
        lock (gate)
        {
            if (choice != choices)
            {
                return;
            }

            Settings = settings;
        }

        Renew(Documents.Where(document => document.Settings != settings.Of(document.Key)));
    }

    /// <summary>Takes in a document; one that is open already is replaced.</summary>
    /// <param name="item">The document.</param>
    public void Open(TextDocumentItem item) => Put(item.Uri, item.Version, SourceText.FromText(item.Text));

    /// <summary>Takes in a change; of a document that is not open nothing is known and nothing is changed.</summary>
    /// <param name="change">The change.</param>
    public void Change(DidChangeTextDocumentParams change)
    {
        if (Find(change.TextDocument.Uri) is not { } document)
        {
            return;
        }

        var text = document.Text;
        foreach (var part in change.ContentChanges)
        {
            if (part.Range is null)
            {
                text = SourceText.FromText(part.Text);
                continue;
            }

            var span = new PositionMap(text, IsUtf8).SpanOf(part.Range);
            text = SourceText.FromText(string.Concat(text.Content.AsSpan(0, span.Start), part.Text, text.Content.AsSpan(span.End)));
        }

        Put(document.Uri, change.TextDocument.Version, text);
    }

    /// <summary>Lets go of a document and of all that came from it.</summary>
    /// <param name="uri">Its address.</param>
    public void Close(string uri)
    {
        if (Find(uri) is { } document)
        {
            lock (gate)
            {
                documents = documents.Remove(document.Key);
            }

            document.Overtake();
            Publication.Forget(document);
            Tokens.Forget(document.Key);
            Recheck(document.Key);
        }
    }

    /// <summary>The newest text of a document.</summary>
    /// <param name="uri">Its address.</param>
    /// <returns>The document; null when it is not open.</returns>
    public OpenDocument? Find(string uri) => documents.GetValueOrDefault(DocumentAddress.KeyOf(uri));

    /// <summary>Whether no newer text of a document has come.</summary>
    /// <param name="document">A text of it.</param>
    /// <returns>True when it is the newest.</returns>
    public bool IsNewest(OpenDocument document) => ReferenceEquals(documents.GetValueOrDefault(document.Key), document);

    /// <summary>Looks again at every open document that uses a file which has changed.</summary>
    /// <param name="key">The file's full path.</param>
    public void Recheck(string key) => Renew(Documents.Where(document => document.Key != key && Uses(document, key)));

    /// <summary>Reads a file as plantings that use it would: from the editor where it is open.</summary>
    /// <param name="path">Its full path.</param>
    /// <returns>A document that nobody has open, with version 0; the open one where there is one; null when it cannot be read.</returns>
    public OpenDocument? Read(string path)
    {
        if (documents.GetValueOrDefault(path) is { } open)
        {
            return open;
        }

        return Path.GetDirectoryName(path) is not null && files.Read(path, Path.GetFileName(path)) is Binding.Use.FileReading.Found found
            ? new OpenDocument(DocumentAddress.UriOf(path), 0, found.Text, files, Settings.Of(path), IsUtf8)
            : null;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var document in documents.Values)
        {
            document.Overtake();
        }
    }

    private static bool Uses(OpenDocument document, string key)
    {
        try
        {
            return UsedPaths.Has(document.Assessment, key);
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    /// <summary>A folder's full path, the same whether the editor ends it with a slash or not.</summary>
    private static string FolderOf(string path) => Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));

    private static ImmutableArray<string> PathsOf(IEnumerable<WorkspaceFolder> folders) =>
        [.. folders.Select(folder => DocumentAddress.PathOf(folder.Uri)).OfType<string>().Where(path => path.Length > 0).Select(FolderOf).Distinct(StringComparer.Ordinal)];

    /// <summary>Looks at documents again though their texts have not changed. A text that has come meanwhile stays.</summary>
    private void Renew(IEnumerable<OpenDocument> stale)
    {
        var isAny = false;
        foreach (var document in stale)
        {
            isAny = true;
            Put(document.Uri, document.Version, document.Text, document);
        }

        if (isAny)
        {
            Refreshing.Ask();
        }
    }

    private void Put(string uri, int version, SourceText text, OpenDocument? renewed = null)
    {
        OpenDocument document;
        OpenDocument? before;
        lock (gate)
        {
            var key = DocumentAddress.KeyOf(uri);
            before = documents.GetValueOrDefault(key);
            document = new OpenDocument(uri, version, text, files, Settings.Of(key), IsUtf8, before);
            if (renewed is not null && before != renewed)
            {
                // It was closed, or its newer text was made with all that is known now.
                return;
            }

            documents = documents.SetItem(document.Key, document);
        }

        before?.Overtake();
        Publication.Look(document);
        if (renewed is null && documents.Count > 1)
        {
            Recheck(document.Key);
        }
    }
}
