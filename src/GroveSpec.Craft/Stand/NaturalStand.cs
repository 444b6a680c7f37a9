using System.Collections.Immutable;

namespace GroveSpec.Craft.Stand;

/// <summary>A mapped stand that grew by itself, to lay beside a planting.</summary>
/// <param name="Name">What grows there, in plain words.</param>
/// <param name="DataSet">The data set's name in the R package spatstat.data.</param>
/// <param name="Stems">How many stems were mapped.</param>
/// <param name="ClarkEvans">Its index of Clark and Evans with Donnelly's correction.</param>
/// <param name="UniformAngle">Its mean uniform angle index, without correction for the edge.</param>
/// <param name="HeightDifferentiation">How much heights of nearest neighbours differ; null where none were measured.</param>
/// <param name="BasalAreaGini">How unequally the basal area is shared; null where no thickness was measured. Not corrected: with a hundred stems the correction is under one in a hundred.</param>
public sealed record NaturalStand(string Name, string DataSet, int Stems, double ClarkEvans, double UniformAngle, double? HeightDifferentiation = null, double? BasalAreaGini = null)
{
    /// <summary>
    /// The stands, the most crowded first. The values were computed with R 4.2.2 and spatstat from the data sets of
    /// spatstat.data, by a program of its own. They run from crowded to orderly: no one value is the natural one.
    /// </summary>
    public static readonly ImmutableArray<NaturalStand> All =
    [
        new("redwood seedlings", "redwood", 62, 0.584991, 0.6411),
        new("Finnish pines", "finpines", 126, 0.856386, 0.5595, HeightDifferentiation: 0.36722, BasalAreaGini: 0.604288),
        new("saplings of Japanese black pine", "japanesepines", 65, 1.007507, 0.5423),
        new("Swedish pines", "swedishpines", 71, 1.291069, 0.5176),
    ];

    /// <summary>An index of the stand.</summary>
    /// <param name="kind">Which; differences of size are those of heights.</param>
    /// <returns>Its value; null where no such number was taken.</returns>
    public double? ValueOf(StandIndexKind kind) => kind switch
    {
        StandIndexKind.ClarkEvans => ClarkEvans,
        StandIndexKind.UniformAngle => UniformAngle,
        StandIndexKind.SizeDifferentiation => HeightDifferentiation,
        StandIndexKind.BasalAreaGini => BasalAreaGini,
        _ => null,
    };
}
