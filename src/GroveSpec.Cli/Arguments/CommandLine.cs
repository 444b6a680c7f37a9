using System.CommandLine;
using GroveSpec.Cli.Commands;

namespace GroveSpec.Cli.Arguments;

/// <summary>Reads the words behind a command.</summary>
internal static class CommandLine
{
    private const string Terminator = "--";

    /// <summary>Reads them.</summary>
    /// <param name="command">The command they are for.</param>
    /// <param name="words">The words behind its name. All behind <c>--</c> are names, whatever they look like.</param>
    /// <returns>The options, the names beside them, and whether help was asked for.</returns>
    /// <exception cref="UsageException">There is no such option, or one lacks its value.</exception>
    public static (ParseResult Parsed, IReadOnlyList<string> Names, bool IsHelp) Read(GroveCommand command, IReadOnlyList<string> words)
    {
        var end = words.Count;
        for (var index = 0; index < words.Count; index++)
        {
            if (words[index] == Terminator)
            {
                end = index;
                break;
            }
        }

        Argument<string[]> beside = new("names") { Arity = ArgumentArity.ZeroOrMore };
        Option<bool> help = new("--help", "-h");
        var grammar = new Command(command.Name) { beside, help };
        foreach (var option in command.Options)
        {
            grammar.Options.Add(option);
        }

        // A name that begins with @ is a name, not a file of further words; the command's own word comes first,
        // because the parser takes one such word away.
        var parsed = grammar.Parse([command.Name, .. words.Take(end)], new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.GetValue(help))
        {
            return (parsed, [], true);
        }

        var names = new List<string>(parsed.GetValue(beside) ?? []);
        foreach (var name in names)
        {
            if (name.Length > 1 && name[0] == '-')
            {
                throw new UsageException($"{command.Name} has no option {Shown(name)}{Suggestion(name, command)}. A file of that name is written after --.");
            }
        }

        if (parsed.Errors.Count > 0)
        {
            throw new UsageException(Explain(parsed, command));
        }

        names.AddRange(words.Skip(end + 1));
        return (parsed, names, false);
    }

    private static string Explain(ParseResult parsed, GroveCommand command)
    {
        foreach (var option in command.Options)
        {
            if (parsed.GetResult(option) is not { } result || !result.Errors.Any())
            {
                continue;
            }

            return result.Tokens.Count == 0
                ? $"{option.Name} needs a value behind it: {option.Name} {option.HelpName}."
                : $"{option.Name} is given more than once, or with more than one value.";
        }

        return $"The words behind {command.Name} cannot be read: {parsed.Errors[0].Message}";
    }

    private static string Suggestion(string name, GroveCommand command)
    {
        var equals = name.IndexOf('=', StringComparison.Ordinal);
        var word = equals > 0 ? name[..equals] : name;
        return NearWord.Find(word, command.Options.Select(option => option.Name)) is { } near ? $"; did you mean {near}?" : "";
    }

    private static string Shown(string name) => Terminals.HarmlessText.Shorten(Terminals.HarmlessText.OneLine(name), 60);
}
