namespace GroveSpec.Model.States;

/// <summary>Whether a trunk is there on a day.</summary>
public enum Presence
{
    /// <summary>Not yet there.</summary>
    Planned,

    /// <summary>There.</summary>
    Standing,

    /// <summary>No longer there.</summary>
    Removed,
}
