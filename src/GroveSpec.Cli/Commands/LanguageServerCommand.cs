using System.CommandLine;
using GroveSpec.Cli.Terminals;
using GroveSpec.LanguageServer;

namespace GroveSpec.Cli.Commands;

/// <summary>Serves an editor.</summary>
internal sealed class LanguageServerCommand : GroveCommand
{
    /// <inheritdoc/>
    public override string Name => "language-server";

    /// <inheritdoc/>
    public override string Purpose => "serves an editor over standard input and output";

    /// <inheritdoc/>
    public override string Help => """
        grovespec language-server [--stdio]

        Serves an editor over standard input and output by the Language Server Protocol,
        version 3.17. An editor starts it; nobody has to type it.

        It ends when the editor says so or is gone, with status 0 when the editor said
        shutdown first, and 1 otherwise.

        --stdio          taken for editors that always give it; there is no other way
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [new Option<bool>("--stdio")];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal) =>
        LanguageServerProgram.RunAsync(terminal.Input, terminal.Output, GroveProgram.Version, terminal.Tell).GetAwaiter().GetResult() ? ExitStatus.Good : ExitStatus.Findings;
}
