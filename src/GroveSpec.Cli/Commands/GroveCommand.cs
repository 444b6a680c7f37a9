using System.CommandLine;
using GroveSpec.Cli.Terminals;

namespace GroveSpec.Cli.Commands;

/// <summary>One command of the program.</summary>
internal abstract class GroveCommand
{
    /// <summary>The word it is called by.</summary>
    public abstract string Name { get; }

    /// <summary>What it does, in a line of the program's help.</summary>
    public abstract string Purpose { get; }

    /// <summary>What <c>--help</c> tells of it.</summary>
    public abstract string Help { get; }

    /// <summary>Its options, without <c>--help</c>.</summary>
    public abstract IReadOnlyList<Option> Options { get; }

    /// <summary>Does it.</summary>
    /// <param name="parsed">The options as read.</param>
    /// <param name="names">What was named beside the options, in order.</param>
    /// <param name="terminal">Where to read from and speak to.</param>
    /// <returns>How it ended.</returns>
    /// <exception cref="UsageException">The options cannot be meant so.</exception>
    /// <exception cref="Files.FileTroubleException">A file that all depends on cannot be read or written.</exception>
    public abstract ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal);
}
