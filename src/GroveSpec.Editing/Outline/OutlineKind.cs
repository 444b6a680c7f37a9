namespace GroveSpec.Editing.Outline;

/// <summary>What a line of an outline stands for.</summary>
public enum OutlineKind
{
    /// <summary>The planting itself.</summary>
    Planting,

    /// <summary>A trunk.</summary>
    Trunk,

    /// <summary>A role.</summary>
    Role,

    /// <summary>A task.</summary>
    Task,

    /// <summary>A day of readings, or a reading of one.</summary>
    Reading,

    /// <summary>A species profile.</summary>
    Profile,

    /// <summary>A used file.</summary>
    File,
}
