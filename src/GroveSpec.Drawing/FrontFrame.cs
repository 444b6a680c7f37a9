using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Front;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>How the view from the front lies on its page, for whoever has to turn a place on the page into one in the planting.</summary>
public sealed class FrontFrame
{
    private readonly Stage stage;

    private FrontFrame(Stage stage) => this.stage = stage;

    /// <summary>The viewer's eye.</summary>
    public ViewFrame View => stage.Frame;

    /// <summary>The frame of the plate of a planting.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <returns>The frame.</returns>
    public static FrontFrame Of(PlantingState state) => new(FrontScene.Of(state, FrontView.Of(state)).Stage);

    /// <summary>Where a place appears on the page.</summary>
    /// <param name="place">The place.</param>
    /// <returns>Pixels from the page's left and upper edge; null when the eye cannot see it.</returns>
    public (double X, double Y)? PageOf(SpacePoint place) => stage.See(place) is { } seen ? (seen.Spot.X, seen.Spot.Y) : null;

    /// <summary>The place, as far from the eye as another, that appears somewhere on the page.</summary>
    /// <param name="x">Pixels from the page's left edge, finite.</param>
    /// <param name="y">Pixels from its upper edge, finite.</param>
    /// <param name="asFarAs">The other place.</param>
    /// <returns>The place; null when the eye cannot see the other.</returns>
    public SpacePoint? PlaceAt(double x, double y, SpacePoint asFarAs) => stage.Frame.See(asFarAs) is { } seen
        ? stage.Frame.PlaceOf(new(Length.FromMillimetres((x - stage.Left) / stage.Scale), Length.FromMillimetres((stage.Ground - y) / stage.Scale), seen.Depth))
        : null;
}
