using GroveSpec.Checks.Nudging;
using GroveSpec.Drawing.Nudge;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>The plan as it stands after the smallest moves, with where trunks are now and which way they go.</summary>
public static class NudgePlate
{
    /// <summary>Draws the plate.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="suggestion">The moves.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>A whole SVG document, the same bytes for the same planting, moves and options.</returns>
    public static string Draw(PlantingState state, NudgeSuggestion suggestion, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(suggestion);
        return PlanPlate.Write(new DrawingSubject(suggestion.State, []), options, new NudgeLayer(state, suggestion, options.Units)).Finish();
    }
}
