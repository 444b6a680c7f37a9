using System.Text;
using GroveSpec.Editing.Explaining;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.Hovers;

/// <summary>Tells what is known of the word under the pointer.</summary>
internal static class HoverAnswer
{
    /// <summary>What is known of a place.</summary>
    /// <param name="session">The session.</param>
    /// <param name="document">The document.</param>
    /// <param name="position">The place.</param>
    /// <returns>What is known; null where nothing is.</returns>
    public static Hover? Of(Session session, OpenDocument document, Position position)
    {
        if (Explainer.At(document.Assessment, document.Positions.OffsetOf(position)) is not { } known)
        {
            return null;
        }

        var isMarkdown = session.Capabilities.TextDocument?.Hover?.ContentFormat is not { } formats || formats.Contains(MarkdownText.Kind);
        return new(
            isMarkdown ? new(MarkdownText.Kind, InMarkdown(known)) : new("plaintext", string.Join("\n", known.Lines.Prepend(known.Title))),
            document.Positions.RangeOf(known.Span));
    }

    private static string InMarkdown(Explanation known)
    {
        var text = new StringBuilder($"**{MarkdownText.Escape(known.Title)}**\n\n");
        foreach (var line in known.Lines)
        {
            text.Append(MarkdownText.Escape(line)).Append("\n\n");
        }

        if (known.Picture is { } picture)
        {
            text.Append("![").Append(MarkdownText.Escape(known.Title)).Append("](data:image/svg+xml;base64,").Append(Convert.ToBase64String(Encoding.UTF8.GetBytes(picture))).Append(")\n");
        }

        return text.ToString().TrimEnd('\n');
    }
}
