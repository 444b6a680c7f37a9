namespace GroveSpec.Binding.Quantities;

/// <summary>What a number counts.</summary>
public enum QuantityKind
{
    /// <summary>A distance.</summary>
    Length,

    /// <summary>An angle or a bearing.</summary>
    Angle,

    /// <summary>A part of a whole.</summary>
    Share,

    /// <summary>A span of calendar time.</summary>
    Time,

    /// <summary>A temperature of the air.</summary>
    Temperature,

    /// <summary>A bare number.</summary>
    Count,
}
