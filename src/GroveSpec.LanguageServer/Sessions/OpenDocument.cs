using System.Diagnostics.CodeAnalysis;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Craft.Survey;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>One text of an open document. It never changes; an edit makes another.</summary>
[SuppressMessage("Design", "CA1001", Justification = "A source of cancellation without a timer or a wait handle holds nothing that must be let go.")]
internal sealed class OpenDocument
{
    private readonly CancellationTokenSource overtaken = new();
    private readonly Lazy<Assessment> assessment;

    // What this text is read by, and what comes of it. The first is let go of once the second is there: the two may share statements,
    // but no text holds on to those before it.
    private volatile SyntaxTree? treeBefore;
    private volatile SyntaxTree? tree;

    // How the tape readings of this text agree, or of one before it while this one has not been looked at. It holds numbers alone.
    private volatile TapeAgreement? tapes;

    /// <summary>Makes one.</summary>
    /// <param name="uri">The document's address as the editor gave it.</param>
    /// <param name="version">The text's version as the editor gave it.</param>
    /// <param name="text">The text.</param>
    /// <param name="files">What reads the files that it uses.</param>
    /// <param name="settings">What the grower has chosen.</param>
    /// <param name="isUtf8">Whether the editor counts bytes of UTF-8.</param>
    /// <param name="before">The text that it came of by an edit; null where there is none.</param>
    public OpenDocument(string uri, int version, SourceText text, IFileReader files, ServerSettings settings, bool isUtf8, OpenDocument? before = null)
    {
        Uri = uri;
        Key = DocumentAddress.KeyOf(uri);
        Version = version;
        Text = text;
        Settings = settings;
        Positions = new(text, isUtf8);
        Overtaken = overtaken.Token;
        treeBefore = before?.NewestTree;
        tapes = before?.tapes;
        var reader = DocumentAddress.PathOf(uri) is null ? new NoFiles() : files;
        assessment = new(() => Assess(reader), LazyThreadSafetyMode.ExecutionAndPublication);
    }

    /// <summary>The document's address as the editor gave it.</summary>
    public string Uri { get; }

    /// <summary>The document's full path, or its address when it lies in no folder; findings name it so.</summary>
    public string Key { get; }

    /// <summary>What the document is called before the grower: the planting's name, else that of its file.</summary>
    public string Title => Assessment.Planting.Name?.Value ?? Path.GetFileName(Key);

    /// <summary>The version of the text.</summary>
    public int Version { get; }

    /// <summary>The text.</summary>
    public SourceText Text { get; }

    /// <summary>What the grower has chosen.</summary>
    public ServerSettings Settings { get; }

    /// <summary>Counts places as the editor does.</summary>
    public PositionMap Positions { get; }

    /// <summary>Ends work on this text once a newer one has come.</summary>
    public CancellationToken Overtaken { get; }

    /// <summary>All that is known of the text; worked out by whoever asks first.</summary>
    /// <exception cref="OperationCanceledException">A newer text has come.</exception>
    public Assessment Assessment => assessment.Value;

    /// <summary>The text's tree.</summary>
    public SyntaxTree Tree => Assessment.Tree;

    /// <summary>The tree of this text, or of one before it while this one has not been read; null where none was.</summary>
    private SyntaxTree? NewestTree
    {
        get
        {
            // In this order, since the other is set before this one is let go of.
            var earlier = treeBefore;
            return tree ?? earlier;
        }
    }

    /// <summary>Ends the work on this text.</summary>
    public void Overtake() => overtaken.Cancel();

    private Assessment Assess(IFileReader reader)
    {
        var known = Assessment.Of(Key, Read(), reader, Settings.Date, Settings.Units, Overtaken, tapes);
        tapes = known.Tapes;
        return known;
    }

    private SyntaxTree Read()
    {
        Overtaken.ThrowIfCancellationRequested();
        var read = treeBefore is { } before ? GroveParser.Parse(Text, before) : GroveParser.Parse(Text);
        tree = read;
        treeBefore = null;
        return read;
    }
}
