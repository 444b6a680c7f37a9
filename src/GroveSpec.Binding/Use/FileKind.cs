namespace GroveSpec.Binding.Use;

/// <summary>What stands at a path.</summary>
public enum FileKind
{
    /// <summary>Nothing, or nothing that may be looked at.</summary>
    None,

    /// <summary>A file with a length.</summary>
    Regular,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A pipe.</summary>
    Pipe,

    /// <summary>A device.</summary>
    Device,

    /// <summary>A socket.</summary>
    Socket,

    /// <summary>Something that no other word here is for.</summary>
    Other,
}
