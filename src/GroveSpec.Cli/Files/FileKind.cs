namespace GroveSpec.Cli.Files;

/// <summary>What stands at a path.</summary>
internal enum FileKind
{
    /// <summary>Nothing, or nothing that may be looked at.</summary>
    None,

    /// <summary>A file with a length.</summary>
    Regular,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A pipe, a socket or a device.</summary>
    Other,
}
