using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Terminals;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using NodaTime;

namespace GroveSpec.Cli.Judging;

/// <summary>Reads and judges plantings for one run, each by itself: a fault in one is a message about that one.</summary>
/// <param name="terminal">Where standard input comes from.</param>
/// <param name="day">The day to judge; null for the newest that the file knows.</param>
/// <param name="units">The units in which messages speak.</param>
internal sealed class PlantingReading(Terminal terminal, LocalDate? day, UnitSystem units)
{
    private readonly FolderFiles used = new();

    /// <summary>The texts that were read, those that plantings use included.</summary>
    public SourceLibrary Sources { get; } = new();

    /// <summary>Whether a file describes a planting, which one of shared roles and limits does not.</summary>
    /// <param name="assessment">What is known of it.</param>
    /// <returns>True where it has a name, trunks or work.</returns>
    public static bool IsPlanting(Assessment assessment) =>
        assessment.Planting.Name is not null || !assessment.Planting.Trunks.IsEmpty || !assessment.Planting.Tasks.IsEmpty;

    /// <summary>Reads and judges one.</summary>
    /// <param name="file">The file.</param>
    /// <returns>All that is known of it.</returns>
    /// <exception cref="FileTroubleException">It cannot be read, or something went wrong inside the program.</exception>
    public Assessment Read(InputFile file)
    {
        var text = InputReading.Read(file, terminal);
        var assessment = Guard.Run(file.Name, "reading it", () => Assessment.Of(file.Name, text, used, day, units));
        Sources.Add(file.Name, text);
        foreach (var one in assessment.Used)
        {
            Sources.Add(one.Path, one.Tree.Text);
        }

        return assessment;
    }
}
