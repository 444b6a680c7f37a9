namespace GroveSpec.Model.Tasks;

/// <summary>How high on a trunk.</summary>
public enum TrunkPosition
{
    /// <summary>In the lowest third.</summary>
    Low,

    /// <summary>In the middle third.</summary>
    Middle,

    /// <summary>In the top third.</summary>
    High,
}
