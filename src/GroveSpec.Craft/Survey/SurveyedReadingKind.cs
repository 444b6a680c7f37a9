namespace GroveSpec.Craft.Survey;

/// <summary>How a reading fits the others.</summary>
public enum SurveyedReadingKind
{
    /// <summary>It fits.</summary>
    Fits,

    /// <summary>It is off, and was left out of the fit.</summary>
    LeftOut,

    /// <summary>It is one of several of which one is off; the others do not tell which.</summary>
    MayBeOff,

    /// <summary>It is between two places that the file names, and disagrees with them.</summary>
    AgainstPlaces,

    /// <summary>It cannot be used: a thickness is missing, a trunk is not there, or both ends are one trunk.</summary>
    Unusable,
}
