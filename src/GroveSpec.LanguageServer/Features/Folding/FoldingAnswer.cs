using GroveSpec.Editing.Outline;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.Folding;

/// <summary>Tells which lines can be folded.</summary>
internal static class FoldingAnswer
{
    /// <summary>The folds of a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>Each run of lines that can be folded.</returns>
    public static FoldingRange[] Of(OpenDocument document) =>
    [
        .. Folds.Of(document.Tree)
            .Select(fold => new FoldingRange(document.Positions.PositionOf(fold.Span.Start).Line, document.Positions.PositionOf(fold.Span.End).Line, fold.IsComment ? "comment" : "region"))
            .Where(fold => fold.EndLine > fold.StartLine),
    ];
}
