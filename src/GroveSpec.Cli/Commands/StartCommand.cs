using System.CommandLine;
using System.Text;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Beginnings;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Terminals;
using GroveSpec.Model;

namespace GroveSpec.Cli.Commands;

/// <summary>Writes a first planting.</summary>
internal sealed class StartCommand : GroveCommand
{
    private readonly Option<string?> habit = new("--habit") { HelpName = "group|clump|raft" };
    private readonly Option<string?> species = new("--species") { HelpName = "NAME" };
    private readonly Option<string?> trunks = new("--trunks") { HelpName = "NUMBER" };

    /// <inheritdoc/>
    public override string Name => "start";

    /// <inheritdoc/>
    public override string Purpose => "writes a first planting";

    /// <inheritdoc/>
    public override string Help => """
        grovespec start NAME

        Writes a first planting, with a word beside each line, to change into your own.
        It asks nothing and never writes over a file that is there.

          grovespec start salt-bank                        writes salt-bank.grove
          grovespec start first --habit clump --trunks 3
          grovespec start - > first.grove                  prints it instead

        --habit WHICH    group (separate trees), clump (one root base) or raft (one laid
                         trunk); group if left out
        --species NAME   such as larix-kaempferi; left open otherwise
        --trunks NUMBER  from 3 to 15; five if left out
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [habit, species, trunks];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        if (names.Count != 1)
        {
            throw new UsageException(names.Count == 0 ? "Name the planting to write: grovespec start salt-bank." : "Name one planting at a time.");
        }

        var wanted = new Beginning
        {
            Habit = SharedOptions.Choose("--habit", parsed.GetValue(habit) ?? "group", [("group", Habit.Group), ("clump", Habit.Clump), ("raft", Habit.Raft)]),
            Species = SpeciesOf(parsed.GetValue(species)),
            Trunks = TrunksOf(parsed.GetValue(trunks)),
            Name = NameOf(names[0]),
        };
        var text = Encoding.UTF8.GetBytes(FirstPlanting.Write(wanted));
        if (names[0] == InputFile.StandardInput)
        {
            Delivery.Write(null, text, [], terminal);
            return ExitStatus.Good;
        }

        var path = names[0].EndsWith(InputSearch.Ending, StringComparison.Ordinal) ? names[0] : names[0] + InputSearch.Ending;
        OutputFile.Create(path, terminal.Folder, text);
        terminal.Tell($"{HarmlessText.OneLine(path)} is written. Next: grovespec check {HarmlessText.OneLine(path)}");
        return ExitStatus.Good;
    }

    private static string NameOf(string path)
    {
        var stem = Path.GetFileName(path);
        stem = stem.EndsWith(InputSearch.Ending, StringComparison.Ordinal) ? stem[..^InputSearch.Ending.Length] : stem;
        if (path == InputFile.StandardInput)
        {
            return "First planting";
        }

        if (stem.Length == 0)
        {
            throw new UsageException("Name the planting to write, not a folder: grovespec start salt-bank.");
        }

        // The name goes between quotes on one line of the file.
        var name = new StringBuilder();
        foreach (var rune in stem.EnumerateRunes())
        {
            name.Append(rune.Value is '"' or '\\' or '-' or '_' || HarmlessText.Show(rune).Length != rune.Utf16SequenceLength ? " " : rune.ToString());
        }

        var plain = name.ToString().Trim();
        return plain.Length == 0 ? "First planting" : char.ToUpperInvariant(plain[0]) + plain[1..];
    }

    private static string? SpeciesOf(string? written)
    {
        if (written is null)
        {
            return null;
        }

        if (written.Length is > 0 and <= 60 && char.IsAsciiLetter(written[0]) && written.All(letter => char.IsAsciiLetterOrDigit(letter) || letter == '-'))
        {
            return written;
        }

        throw new UsageException("--species needs one word of letters and hyphens, such as larix-kaempferi.");
    }

    private static int TrunksOf(string? written) => written is null
        ? 5
        : int.TryParse(written, System.Globalization.NumberStyles.None, null, out var count) && count is >= FirstPlanting.FewestTrunks and <= FirstPlanting.MostTrunks
            ? count
            : throw new UsageException($"--trunks needs a number from {FirstPlanting.FewestTrunks} to {FirstPlanting.MostTrunks}.");
}
