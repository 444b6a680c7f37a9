using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Terminals;
using GroveSpec.Publishing.Book;

namespace GroveSpec.Cli.Commands;

/// <summary>Makes a book of plantings.</summary>
internal sealed class BookCommand : GroveCommand
{
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "book";

    /// <inheritdoc/>
    public override string Purpose => "makes one page of drawings, findings and tables, to read and to print";

    /// <inheritdoc/>
    public override string Help => """
        grovespec book FILE|FOLDER|- ...

        Makes one page of plantings: drawings from above, from the front and through the
        year, what the checks find with what it means, trunks, roles, readings and work.
        The page opens in any browser with nothing else installed, asks for nothing from
        outside, and prints on A4 and Letter. Several plantings share one page.

          grovespec book salt-bank.grove --output salt-bank.html
          grovespec book . --output collection.html --on 2027-05-01

        --output PATH    a file, or a folder for a page each; standard output if left out
        --on DATE        shows the planting as it is on that day; without it, on the day
                         of the newest reading or of the newest work done
        --units WHICH    metric or inch
        --strict         warnings fail the run as errors do
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var options = new BookOptions { Units = measures };
        var search = InputSearch.Find(names, terminal.Folder);
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        var folder = path is not null && OutputFolder.IsMeant(path, terminal.Folder, 1) ? new OutputFolder(path, search.Files, terminal) : null;
        if (folder is null && path is not null)
        {
            Delivery.RefuseInputs(path, search.Files, terminal);
        }

        var read = ImmutableArray.CreateBuilder<Assessment>();
        var status = run.Each("reading", file =>
        {
            var assessment = reading.Read(file);
            if (!Checker.IsJudged(assessment.State))
            {
                return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
            }

            if (folder is not null)
            {
                folder.Write(file, ".html", Page(file.Name, [assessment], options));
            }

            // A file of shared roles and limits is no planting, and makes no chapter.
            if (assessment.Planting.Name is not null || !assessment.Planting.Trunks.IsEmpty || search.Files.Count == 1)
            {
                read.Add(assessment);
            }

            return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
        });
        if (folder is null && read.Count > 0)
        {
            Delivery.Write(path, Page(search.Files[0].Name, read.ToImmutable(), options), search.Files, terminal);
        }

        return status;
    }

    private static byte[] Page(string file, ImmutableArray<Assessment> plantings, BookOptions options) =>
        Guard.Run(file, "making its book", () => Encoding.UTF8.GetBytes(BookWriter.Write(plantings, options)));
}
