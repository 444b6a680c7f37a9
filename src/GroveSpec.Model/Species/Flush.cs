namespace GroveSpec.Model.Species;

/// <summary>How often a species puts out shoots in a year.</summary>
public enum Flush
{
    /// <summary>Once, in spring.</summary>
    Single,

    /// <summary>Once, and in part again when cut or defoliated.</summary>
    Partial,

    /// <summary>Again and again while it is warm.</summary>
    Repeated,

    /// <summary>All year, without a rest.</summary>
    Continuous,
}
