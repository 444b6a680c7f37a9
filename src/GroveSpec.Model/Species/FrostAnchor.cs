namespace GroveSpec.Model.Species;

/// <summary>From which day of the site's year a stage is counted.</summary>
public enum FrostAnchor
{
    /// <summary>The usual last frost.</summary>
    LastFrost,

    /// <summary>The usual first frost.</summary>
    FirstFrost,

    /// <summary>The summer solstice.</summary>
    Solstice,
}
