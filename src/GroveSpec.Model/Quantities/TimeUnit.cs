namespace GroveSpec.Model.Quantities;

/// <summary>The unit in which a span of calendar time is said.</summary>
public enum TimeUnit
{
    /// <summary>Calendar days.</summary>
    Days,

    /// <summary>Weeks of seven days.</summary>
    Weeks,

    /// <summary>Calendar months.</summary>
    Months,

    /// <summary>Calendar years.</summary>
    Years,
}
