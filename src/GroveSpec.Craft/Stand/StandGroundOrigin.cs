namespace GroveSpec.Craft.Stand;

/// <summary>What the ground of a stand is, and why.</summary>
public enum StandGroundOrigin
{
    /// <summary>The container, over which separate trees may stand anywhere.</summary>
    Container,

    /// <summary>What the trunks enclose, because they rise from one base.</summary>
    Clump,

    /// <summary>What the trunks enclose, because they rise from one laid trunk.</summary>
    Raft,

    /// <summary>What the trunks enclose, because no container with an area is named.</summary>
    NoContainer,
}
