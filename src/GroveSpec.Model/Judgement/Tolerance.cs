namespace GroveSpec.Model.Judgement;

/// <summary>A limit that the file sets for a check. Closed to one value: a bare number, a part, a length, an angle or a time.</summary>
public sealed record Tolerance
{
    /// <summary>The check's name, known or not.</summary>
    public required string Check { get; init; }

    /// <summary>Where it was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>The limit as a bare number in the unit of <see cref="Unit"/>.</summary>
    public required double Amount { get; init; }

    /// <summary>The unit of the limit.</summary>
    public required ToleranceUnit Unit { get; init; }
}
