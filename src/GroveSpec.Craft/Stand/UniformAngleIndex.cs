using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Stand;

/// <summary>How evenly the four nearest neighbours stand round a stem (Gadow and Hui), with the standard angle of 72 degrees as in the R package forestSAS.</summary>
public static class UniformAngleIndex
{
    /// <summary>The mean over all stems of the share of the four angles between successive neighbours that are under 72 degrees.</summary>
    /// <param name="places">Where the stems stand.</param>
    /// <returns>0 in a lattice, 1 where all neighbours stand to one side; null with fewer than five stems, and where two of them stand at one place. With few stems chance gives far more than the published 0.5: 0.7 with five.</returns>
    public static double? Mean(ImmutableArray<PlanPoint> places) =>
        new NearestStems([.. places.Select(place => place.X.Millimetres)], [.. places.Select(place => place.Y.Millimetres)]).UniformAngle();
}
