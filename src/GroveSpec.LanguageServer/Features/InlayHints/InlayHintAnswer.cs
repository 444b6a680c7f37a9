using GroveSpec.Editing.Notes;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using Range = GroveSpec.LanguageServer.Protocol.Range;

namespace GroveSpec.LanguageServer.Features.InlayHints;

/// <summary>Puts notes into lines.</summary>
internal static class InlayHintAnswer
{
    /// <summary>The notes of some lines.</summary>
    /// <param name="document">The document.</param>
    /// <param name="range">The lines.</param>
    /// <returns>The notes; none where the grower has turned them off.</returns>
    public static InlayHint[] Of(OpenDocument document, Range range) => !document.Settings.ShowsHints ? [] :
    [
        .. InLineNotes.Of(document.Assessment, document.Positions.SpanOf(range))
            .Select(note => new InlayHint(document.Positions.PositionOf(note.Span.End), note.Text, Tooltip: new("plaintext", note.Telling), PaddingLeft: true)),
    ];
}
