using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Containers;

/// <summary>The room that a trunk leaves to the rim.</summary>
public static class RimRoom
{
    /// <summary>The shortest distance from a trunk's bark to the rim.</summary>
    /// <param name="outline">The rim.</param>
    /// <param name="trunk">A trunk whose place is known; without a known diameter its centre is taken.</param>
    /// <returns>The distance, negative when the bark reaches past the rim.</returns>
    public static Length Of(ContainerOutline outline, TrunkState trunk)
    {
        // Half an odd number of nanometres is rounded up, on the safe side.
        var diameter = trunk.Diameter?.Value.Nanometres ?? 0;
        return outline.SignedDistance(trunk.Place!.Value) - new Length(diameter - (diameter / 2));
    }
}
