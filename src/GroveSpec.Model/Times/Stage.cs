namespace GroveSpec.Model.Times;

/// <summary>A stage of the tree's year.</summary>
public enum Stage
{
    /// <summary>Buds swell and part.</summary>
    BudBreak,

    /// <summary>Leaves unfold.</summary>
    LeafOut,

    /// <summary>New shoots and leaves have hardened.</summary>
    HardenOff,

    /// <summary>The summer solstice and the days about it.</summary>
    Midsummer,

    /// <summary>Leaves turn.</summary>
    LeafColour,

    /// <summary>Leaves drop.</summary>
    LeafFall,

    /// <summary>The tree rests.</summary>
    Dormant,
}
