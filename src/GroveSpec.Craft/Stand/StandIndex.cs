namespace GroveSpec.Craft.Stand;

/// <summary>One number of a stand, and what chance gives for it.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Value">The number; null where it has none, because the stems are too few or their ground is not known.</param>
/// <param name="Chance">What chance gives for as many stems; null where there is no value.</param>
public sealed record StandIndex(StandIndexKind Kind, double? Value, ChanceBand? Chance)
{
    /// <summary>What it tells against chance.</summary>
    public StandReading Reading => Value is { } value && Chance is not null ? Chance.Read(value) : StandReading.CannotTell;
}
