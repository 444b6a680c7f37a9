using System.Reflection;
using System.Text;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Commands;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Terminals;

namespace GroveSpec.Cli;

/// <summary>The program: finds the command that is meant, runs it, and turns whatever happens into a message and an exit status.</summary>
internal static class GroveProgram
{
    /// <summary>Set to 1 it adds the inner report of a fault to the message, for those who mend the program.</summary>
    public const string FaultVariable = "GROVESPEC_FAULTS";

    /// <summary>The program's version.</summary>
    public static string Version => typeof(GroveProgram).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "unknown";

    /// <summary>Runs it.</summary>
    /// <param name="words">The words of the command line.</param>
    /// <param name="terminal">Where to read from and speak to.</param>
    /// <returns>How it ended.</returns>
    public static ExitStatus Run(IReadOnlyList<string> words, Terminal terminal)
    {
        try
        {
            return Dispatch(words, terminal);
        }
        catch (UsageException wrong)
        {
            terminal.Tell(HarmlessText.OneLine(wrong.Message));
            terminal.Tell(words.Count > 0 && CommandList.Names.Contains(words[0])
                ? $"grovespec {words[0]} --help tells more."
                : "grovespec --help tells more.");
            return ExitStatus.Usage;
        }
        catch (FileTroubleException trouble)
        {
            Tell(trouble, terminal);
            return ExitStatus.Files;
        }
#pragma warning disable CA1031 // One fault is one message, not an end of the process with a trace of its inner workings.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            terminal.Tell($"Something went wrong inside grovespec, and it is not your file's fault: {HarmlessText.Shorten(HarmlessText.OneLine(fault.Message), 400)}");
            terminal.Tell($"Nothing more was written. Please report it together with the file; with {FaultVariable}=1 set, more is told.");
            if (Environment.GetEnvironmentVariable(FaultVariable) == "1")
            {
                terminal.Tell(fault.ToString());
            }

            return ExitStatus.Files;
        }
    }

    /// <summary>Tells of a file that cannot be read or written.</summary>
    /// <param name="trouble">The trouble.</param>
    /// <param name="terminal">Whom to tell.</param>
    public static void Tell(FileTroubleException trouble, Terminal terminal) =>
        terminal.Tell($"{HarmlessText.Shorten(HarmlessText.OneLine(trouble.File), 400)}: {HarmlessText.OneLine(trouble.Message)}");

    private static ExitStatus Dispatch(IReadOnlyList<string> words, Terminal terminal)
    {
        if (words.Count == 0)
        {
            terminal.Tell(ProgramHelp.Text.TrimEnd());
            return ExitStatus.Usage;
        }

        switch (words[0])
        {
            case "--help" or "-h" or "help":
                Say(words.Count > 1 && CommandList.Make(words[1]) is { } asked ? asked.Help : ProgramHelp.Text, terminal);
                return ExitStatus.Good;
            case "--version":
                Say($"grovespec {Version}\n", terminal);
                return ExitStatus.Good;
            default:
                break;
        }

        var command = CommandList.Make(words[0]) ?? throw new UsageException(Unknown(words[0]));
        var (parsed, names, isHelp) = CommandLine.Read(command, [.. words.Skip(1)]);
        if (isHelp)
        {
            Say(command.Help, terminal);
            return ExitStatus.Good;
        }

        return command.Run(parsed, names, terminal);
    }

    private static void Say(string text, Terminal terminal) => Delivery.Write(null, Encoding.UTF8.GetBytes(text), [], terminal);

    private static string Unknown(string word)
    {
        var shown = HarmlessText.Shorten(HarmlessText.OneLine(word), 60);
        return word.EndsWith(InputSearch.Ending, StringComparison.Ordinal)
            ? $"Say first what to do with {shown}: grovespec check {shown}, for one."
            : NearWord.Find(word, CommandList.Names) is { } near
                ? $"There is no command {shown}; did you mean {near}?"
                : $"There is no command {shown}. There are {string.Join(", ", CommandList.Names.SkipLast(1))} and {CommandList.Names[^1]}.";
    }
}
