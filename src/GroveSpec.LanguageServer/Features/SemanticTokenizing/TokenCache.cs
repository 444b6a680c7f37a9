using System.Globalization;
using GroveSpec.Editing.Colouring;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.Syntax.Text;
using Range = GroveSpec.LanguageServer.Protocol.Range;

namespace GroveSpec.LanguageServer.Features.SemanticTokenizing;

/// <summary>Classes words, and remembers of each document the last answer, so that only what changed need be sent.</summary>
internal sealed class TokenCache
{
    private const int NumbersOfAWord = 5;

    private readonly Lock gate = new();
    private readonly Dictionary<string, (string Id, int[] Data)> last = new(StringComparer.Ordinal);
    private long answers;

    /// <summary>The names of classes, in the order of <see cref="WordClass"/>, from those that every editor has a colour for.</summary>
    public static SemanticTokensLegend Legend { get; } = new(
        ["keyword", "variable", "class", "function", "type", "decorator", "enumMember", "number", "operator", "string", "comment"],
        ["declaration"]);

    /// <summary>The words of a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>Their numbers.</returns>
    public SemanticTokens Full(OpenDocument document)
    {
        var data = Numbers(document, new TextSpan(0, document.Text.Length));
        return new(data, Keep(document, data));
    }

    /// <summary>What changed since an answer.</summary>
    /// <param name="document">The document.</param>
    /// <param name="previous">The answer's mark.</param>
    /// <returns>One edit, or none; all words where that answer is no longer known.</returns>
    public SemanticTokensOrDelta Delta(OpenDocument document, string previous)
    {
        var data = Numbers(document, new TextSpan(0, document.Text.Length));
        (string Id, int[] Data) before;
        lock (gate)
        {
            before = last.GetValueOrDefault(document.Key);
        }

        var id = Keep(document, data);
        return before.Id == previous ? new(id, Edits: Edits(before.Data, data)) : new(id, data);
    }

    /// <summary>The words of a run of lines.</summary>
    /// <param name="document">The document.</param>
    /// <param name="range">The lines.</param>
    /// <returns>Their numbers.</returns>
    public static SemanticTokens OfRange(OpenDocument document, Range range) => new(Numbers(document, document.Positions.SpanOf(range)));

    /// <summary>Lets go of a document that was closed.</summary>
    /// <param name="key">Its key.</param>
    public void Forget(string key)
    {
        lock (gate)
        {
            last.Remove(key);
        }
    }

    private string Keep(OpenDocument document, int[] data)
    {
        lock (gate)
        {
            var id = (++answers).ToString(CultureInfo.InvariantCulture);
            last[document.Key] = (id, data);
            return id;
        }
    }

    private static int[] Numbers(OpenDocument document, TextSpan within)
    {
        var words = WordClasses.Of(document.Tree, within);
        var data = new int[words.Length * NumbersOfAWord];
        var at = 0;
        var before = new Position(0, 0);
        foreach (var word in words)
        {
            var range = document.Positions.RangeOf(word.Span);
            data[at++] = range.Start.Line - before.Line;
            data[at++] = range.Start.Line == before.Line ? range.Start.Character - before.Character : range.Start.Character;
            data[at++] = range.End.Character - range.Start.Character;
            data[at++] = (int)word.Class;
            data[at++] = word.IsDeclaration ? 1 : 0;
            before = range.Start;
        }

        return data;
    }

    /// <summary>The one run of numbers that differs; none where all are the same.</summary>
    private static SemanticTokensEdit[] Edits(int[] before, int[] after)
    {
        var shorter = Math.Min(before.Length, after.Length);
        var start = before.AsSpan().CommonPrefixLength(after);
        if (start == before.Length && start == after.Length)
        {
            return [];
        }

        var end = 0;
        while (end < shorter - start && before[^(end + 1)] == after[^(end + 1)])
        {
            end++;
        }

        return [new(start, before.Length - start - end, after[start..(after.Length - end)])];
    }
}
