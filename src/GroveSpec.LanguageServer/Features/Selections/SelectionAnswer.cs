using GroveSpec.Editing.Outline;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.Selections;

/// <summary>Tells what selections grow to.</summary>
internal static class SelectionAnswer
{
    /// <summary>The runs round some places.</summary>
    /// <param name="document">The document.</param>
    /// <param name="positions">The places.</param>
    /// <returns>For each place the smallest run, which holds the next larger one.</returns>
    public static SelectionRange[] Of(OpenDocument document, Position[] positions) => [.. positions.Select(position => Grow(document, position))];

    private static SelectionRange Grow(OpenDocument document, Position position)
    {
        SelectionRange? parent = null;
        foreach (var span in GrowingSelection.At(document.Tree, document.Positions.OffsetOf(position)).Reverse())
        {
            parent = new(document.Positions.RangeOf(span), parent);
        }

        return parent ?? new(new(position, position));
    }
}
