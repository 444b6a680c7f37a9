using GroveSpec.Binding;

namespace GroveSpec.Editing.Completing;

/// <summary>Finds what fits at the caret.</summary>
public static class Completer
{
    /// <summary>What fits at a place.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="offset">The caret, in UTF-16 code units from the start.</param>
    /// <returns>What fits, the likeliest first; nothing in comments and quoted texts.</returns>
    public static CompletionList At(Assessment assessment, int offset)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var place = CaretPlace.At(assessment.Tree, Math.Clamp(offset, 0, assessment.Tree.Text.Length));
        var fits = new CompletionSearch(assessment, place);
        if (!place.IsInText)
        {
            fits.Collect();
        }

        return new(place.Replaced, fits.Found);
    }
}
