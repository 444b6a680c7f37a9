using System.Globalization;
using System.Text;
using GroveSpec.Editing.Completing;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using CompletionList = GroveSpec.LanguageServer.Protocol.CompletionList;

namespace GroveSpec.LanguageServer.Features.Completions;

/// <summary>Offers what fits at the caret.</summary>
internal static class CompletionAnswer
{
    private const int PlainText = 1;
    private const int Snippet = 2;

    /// <summary>What fits at a place.</summary>
    /// <param name="session">The session.</param>
    /// <param name="document">The document.</param>
    /// <param name="position">The caret.</param>
    /// <returns>What fits, the likeliest first.</returns>
    public static CompletionList Of(Session session, OpenDocument document, Position position)
    {
        var hasSnippets = session.Capabilities.TextDocument?.Completion?.CompletionItem?.SnippetSupport == true;
        var fits = Completer.At(document.Assessment, document.Positions.OffsetOf(position));
        var range = document.Positions.RangeOf(fits.Replaced);
        return new(false, [.. fits.Completions.Select((fit, index) => Item(fit, index, range, hasSnippets))]);
    }

    private static CompletionItem Item(Completion fit, int index, Protocol.Range range, bool hasSnippets)
    {
        var isSnippet = hasSnippets && fit.Parts.Any(part => part.IsPlace);
        return new(
            fit.Label,
            KindOf(fit.Kind),
            fit.Detail,
            SortText: index.ToString("d5", CultureInfo.InvariantCulture),
            InsertTextFormat: isSnippet ? Snippet : PlainText,
            TextEdit: new(range, isSnippet ? InSnippet(fit) : string.Concat(fit.Parts.Select(part => part.Text))));
    }

    /// <summary>Writes places to fill in as the protocol's snippets have them.</summary>
    private static string InSnippet(Completion fit)
    {
        var text = new StringBuilder();
        var place = 0;
        foreach (var part in fit.Parts)
        {
            var escaped = part.Text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("$", "\\$", StringComparison.Ordinal).Replace("}", "\\}", StringComparison.Ordinal);
            text.Append(part.IsPlace ? string.Create(CultureInfo.InvariantCulture, $"${{{++place}:{escaped}}}") : escaped);
        }

        return text.Append("$0").ToString();
    }

    private static int KindOf(CompletionKind kind) => kind switch
    {
        CompletionKind.Form => 15,
        CompletionKind.Trunk => 6,
        CompletionKind.Role => 7,
        CompletionKind.Task => 23,
        CompletionKind.Species => 9,
        CompletionKind.Check => 18,
        CompletionKind.Choice => 20,
        CompletionKind.Unit => 11,
        _ => 14,
    };
}
