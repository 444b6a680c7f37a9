namespace GroveSpec.Editing.Names;

/// <summary>What a name in a file stands for.</summary>
public enum NameKind
{
    /// <summary>A trunk.</summary>
    Trunk,

    /// <summary>A role.</summary>
    Role,

    /// <summary>A task.</summary>
    Task,

    /// <summary>A species; a profile gives it its name.</summary>
    Species,

    /// <summary>A check of the catalogue.</summary>
    Check,

    /// <summary>A file that is used.</summary>
    File,
}
