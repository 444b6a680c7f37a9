namespace GroveSpec.Model;

/// <summary>How the trunks belong together.</summary>
public enum Habit
{
    /// <summary>Separate trees planted together.</summary>
    Group,

    /// <summary>Several trunks from one root base; no base can be moved.</summary>
    Clump,

    /// <summary>One laid trunk whose branches stand as trunks; no base can be moved.</summary>
    Raft,
}
