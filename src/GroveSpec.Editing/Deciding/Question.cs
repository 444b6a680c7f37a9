namespace GroveSpec.Editing.Deciding;

/// <summary>What a grower can have looked into before something is decided. Each is asked by the command of the same name too.</summary>
public enum Question
{
    /// <summary>Where trunks stand by tape readings.</summary>
    Survey,

    /// <summary>Which trunks to keep.</summary>
    Thin,

    /// <summary>From which side it is seen best.</summary>
    Fronts,

    /// <summary>Which smallest moves clear what was found.</summary>
    Nudge,

    /// <summary>Where one more trunk can stand.</summary>
    Ground,

    /// <summary>How natural spacing and sizes are.</summary>
    Stand,
}
