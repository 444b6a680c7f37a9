namespace GroveSpec.Craft.Stand;

/// <summary>A number by which forestry describes a stand.</summary>
public enum StandIndexKind
{
    /// <summary>Distance to the nearest, against chance: Clark and Evans with Donnelly's correction.</summary>
    ClarkEvans,

    /// <summary>Share of narrow angles between neighbours.</summary>
    UniformAngle,

    /// <summary>How much thicknesses of nearest neighbours differ.</summary>
    SizeDifferentiation,

    /// <summary>Mean share of four neighbours that are thicker.</summary>
    SizeDominance,

    /// <summary>How unequally the basal area is shared, corrected for few stems.</summary>
    BasalAreaGini,
}
