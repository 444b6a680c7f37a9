namespace GroveSpec.Craft.Survey;

/// <summary>What readings can leave free.</summary>
public enum SurveyFreedomKind
{
    /// <summary>The file names no place: where the origin lies, which way the axes point and which side is which was chosen.</summary>
    Axes,

    /// <summary>The file names one place: all turns about it, and may be turned over.</summary>
    Turn,

    /// <summary>Trunks may stand at their mirror image.</summary>
    Mirror,

    /// <summary>Trunks can move without a reading changing.</summary>
    Motion,

    /// <summary>Trunks that hang together are tied to no known place.</summary>
    Apart,

    /// <summary>Trunks that nothing was read to.</summary>
    Unread,
}
