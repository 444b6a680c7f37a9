using GroveSpec.Checks.Ground;
using GroveSpec.Drawing.Ground;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>The plan with the ground that is free for one more trunk, and the best spots in it, numbered.</summary>
public static class GroundPlate
{
    /// <summary>Draws the plate.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="answer">What was found for it, with no obstacle.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>A whole SVG document, the same bytes for the same planting, answer and options. A trunk that ground is looked for is left out of the plan; a broken ring with its name is where it stands now or is planned.</returns>
    public static string Draw(PlantingState state, GroundAnswer answer, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(answer);
        return PlanPlate.Write(new DrawingSubject(answer.Without ?? state, []), options, new GroundLayer(state, answer, options.Units)).Finish();
    }
}
