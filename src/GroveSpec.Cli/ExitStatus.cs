namespace GroveSpec.Cli;

/// <summary>What the program tells its caller. A larger number wins where several hold.</summary>
internal enum ExitStatus
{
    /// <summary>No finding that fails the run.</summary>
    Good = 0,

    /// <summary>Findings that fail the run: errors, with <c>--strict</c> warnings too; for <c>tidy --tell</c> a file that is not tidy.</summary>
    Findings = 1,

    /// <summary>The command was not understood, and nothing was read or written; or it names a trunk that no planting has.</summary>
    Usage = 2,

    /// <summary>A file could not be read or written, or something went wrong inside the program.</summary>
    Files = 3,
}
