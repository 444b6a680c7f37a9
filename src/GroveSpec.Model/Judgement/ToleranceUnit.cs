namespace GroveSpec.Model.Judgement;

/// <summary>The unit in which a check's limit is set.</summary>
public enum ToleranceUnit
{
    /// <summary>A bare ratio.</summary>
    Ratio,

    /// <summary>Percent.</summary>
    Percent,

    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Degrees.</summary>
    Degrees,

    /// <summary>Days.</summary>
    Days,
}
