namespace GroveSpec.Craft.Stand;

/// <summary>What an index tells against chance.</summary>
public enum StandReading
{
    /// <summary>Nothing can be told: chance gives such a value as well, or there are too few stems for one.</summary>
    CannotTell,

    /// <summary>Lower than chance gives in nineteen cases of twenty.</summary>
    Below,

    /// <summary>Higher than chance gives in nineteen cases of twenty.</summary>
    Above,
}
