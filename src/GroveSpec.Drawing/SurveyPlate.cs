using GroveSpec.Craft.Survey;
using GroveSpec.Drawing.Surveying;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>The plan with what a tape survey found: places and how sure they are, readings and how they fit, and the reading to take next.</summary>
public static class SurveyPlate
{
    /// <summary>Draws the plate.</summary>
    /// <param name="state">The planting on its day, as it was surveyed.</param>
    /// <param name="survey">What was found.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>
    /// A whole SVG document, the same bytes for the same planting, survey and options. Trunks that hang together but on nothing known are
    /// drawn beside the plan, in axes of their own; trunks that the readings leave free are named below it.
    /// </returns>
    public static string Draw(PlantingState state, TapeSurvey survey, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(options);
        var plan = SurveyedPlan.Of(state, survey);
        return PlanPlate.Write(new DrawingSubject(plan.State, []), options, new SurveyLayer(plan, survey, options)).Finish();
    }
}
