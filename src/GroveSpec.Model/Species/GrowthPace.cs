namespace GroveSpec.Model.Species;

/// <summary>How fast a species grows against others.</summary>
public enum GrowthPace
{
    /// <summary>Slower than most.</summary>
    Slow,

    /// <summary>As most.</summary>
    Medium,

    /// <summary>Faster than most.</summary>
    Fast,
}
