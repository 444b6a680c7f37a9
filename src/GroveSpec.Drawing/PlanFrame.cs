using GroveSpec.Drawing.Plan;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>How the plan of a planting lies on its page, for whoever has to turn a place on the page into one in the planting.</summary>
public sealed class PlanFrame
{
    private readonly PlanLayout layout;

    private PlanFrame(PlanLayout layout) => this.layout = layout;

    /// <summary>Pixels of the page for a millimetre of the planting.</summary>
    public double Scale => layout.Scale;

    /// <summary>The frame of a plan.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="options">How it is drawn; the plate drawn with the same options lies in this frame.</param>
    /// <returns>The frame.</returns>
    public static PlanFrame Of(PlantingState state, DrawingOptions options) => new(PlanLayout.Of(state, options));

    /// <summary>Where a place lies on the page.</summary>
    /// <param name="place">The place.</param>
    /// <returns>Pixels from the page's left and upper edge.</returns>
    public (double X, double Y) PageOf(PlanPoint place) => (layout.ToX(place.X.Millimetres), layout.ToY(place.Y.Millimetres));

    /// <summary>The place that lies somewhere on the page.</summary>
    /// <param name="x">Pixels from the page's left edge, finite.</param>
    /// <param name="y">Pixels from its upper edge, finite.</param>
    /// <returns>The place.</returns>
    public PlanPoint PlaceAt(double x, double y) => PlanPoint.FromMillimetres((x - layout.ToX(0)) / layout.Scale, (layout.ToY(0) - y) / layout.Scale);
}
