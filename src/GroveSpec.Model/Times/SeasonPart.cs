namespace GroveSpec.Model.Times;

/// <summary>Which third of a season.</summary>
public enum SeasonPart
{
    /// <summary>The whole season.</summary>
    Whole,

    /// <summary>Its first month.</summary>
    Early,

    /// <summary>Its second month.</summary>
    Mid,

    /// <summary>Its third month.</summary>
    Late,
}
