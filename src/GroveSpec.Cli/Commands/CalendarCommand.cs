using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Quantities;
using GroveSpec.Publishing.Appointments;
using GroveSpec.Publishing.Raster;

namespace GroveSpec.Cli.Commands;

/// <summary>Tells what is due.</summary>
internal sealed class CalendarCommand : GroveCommand
{
    private readonly Option<string?> by = new("--by") { HelpName = "day|trunk|kind" };
    private readonly Option<string?> ics = new("--ics") { HelpName = "PATH" };
    private readonly Option<string?> timeline = new("--timeline") { HelpName = "PATH" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "calendar";

    /// <inheritdoc/>
    public override string Purpose => "tells what is due, and writes it for a telephone";

    /// <inheritdoc/>
    public override string Help => """
        grovespec calendar FILE|FOLDER|- ...

        Tells what is due: overdue, now, later in the month, in the season, in the year,
        and after that. Dates follow from the site, the species, what was seen, what was
        done, and what waits on what; the tree in front of you goes before them.

          grovespec calendar salt-bank.grove --on 2027-05-01
          grovespec calendar . --by trunk
          grovespec calendar . --ics collection.ics     for a telephone or a mail program
          grovespec calendar salt-bank.grove --timeline year.pdf
          grovespec calendar . --json --output due.json

        --by ORDER       day, by how near it is; trunk; or kind of work. Without it: day
        --ics PATH       writes all of it as iCalendar: all-day events that keep their
                         identity when a date moves, with alarms for what harms when it
                         is missed; a file, a folder for a file each, or - for standard
                         output
        --timeline PATH  draws the work through the seasons, as .svg, .png or .pdf; a
                         folder for several
        --json           writes for programs
        --output PATH    writes to a file instead of standard output
        --on DATE        the day to see it from; without it, the day of the newest
                         reading or of the newest work done
        --units WHICH    metric or inch
        --strict         warnings fail the run as errors do
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [by, ics, timeline, json, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var order = SharedOptions.Choose("--by", parsed.GetValue(by) ?? "day", [("day", AgendaOrder.Day), ("trunk", AgendaOrder.Trunk), ("kind", AgendaOrder.Kind)]);
        if (parsed.GetValue(json) && parsed.GetValue(by) is not null)
        {
            throw new UsageException("--by is for people; --json has the term, the trunks and the kind of each task. Leave one of them out.");
        }

        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var appointments = parsed.GetValue(ics);
        var isStandardTaken = appointments is InputFile.StandardInput;
        if (isStandardTaken && (parsed.GetValue(json) || path is not null))
        {
            throw new UsageException("--ics - writes to standard output, and nothing else then does. Name a file for --ics, or leave out --json and --output.");
        }

        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var pictures = parsed.GetValue(timeline);
        var form = PictureFile.FormatOf(pictures);
        var search = InputSearch.Find(names, terminal.Folder);
        var folder = FolderOf(appointments, 1, search, terminal);
        var pictureFolder = FolderOf(pictures, search.Files.Count, search, terminal);
        Delivery.RefuseSame([path, appointments, pictures], search.Files, terminal);

        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        var read = ImmutableArray.CreateBuilder<Assessment>();
        var hasDates = false;
        var status = run.Each("reading", file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State))
            {
                if (appointments is not null)
                {
                    var dated = Guard.Run(file.Name, "dating its work", () => TaskDates.Of(assessment.Planting));
                    TellUndated(assessment.File, dated, run);
                    var isDated = dated.Any(task => task.Window is not null);
                    hasDates |= isDated;
                    if (folder is not null && isDated)
                    {
                        folder.Write(file, ".ics", Appointments([assessment], file.Name));
                    }
                }

                if (pictures is not null)
                {
                    WriteTimeline(file, assessment, pictures, pictureFolder, form, measures, search, terminal);
                }

                if (PlantingReading.IsPlanting(assessment) || search.Files.Count == 1)
                {
                    read.Add(assessment);
                }
            }

            return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
        });
        var plantings = read.ToImmutable();
        if (appointments is not null && folder is null && !plantings.IsEmpty)
        {
            if (hasDates)
            {
                Delivery.Write(appointments, Appointments(plantings, plantings[0].File), search.Files, terminal);
            }
            else
            {
                terminal.Tell($"No work has a date, so that there is nothing to write to {HarmlessText.OneLine(appointments)}; a calendar without an event is none (RFC 5545, section 3.6).");
            }
        }

        if (!isStandardTaken)
        {
            WriteReport(plantings, run, order, path, parsed.GetValue(json), search, terminal);
        }

        return status;
    }

    private static void TellUndated(string file, ImmutableArray<DatedTask> tasks, FileRun run)
    {
        const int MostNamed = 12;
        ImmutableArray<string> left = [.. tasks.Where(dated => dated.Window is null).Select(dated => dated.Task.Name)];
        if (!left.IsEmpty)
        {
            var more = left.Length > MostNamed ? $" and {left.Length - MostNamed} more" : "";
            run.Tell($"{file}: {(left.Length == 1 ? "1 task has" : $"{left.Length} tasks have")} no date and {(left.Length == 1 ? "is" : "are")} not in the calendar: {string.Join(", ", left.Take(MostNamed))}{more}.");
        }
    }

    private static byte[] Appointments(ImmutableArray<Assessment> plantings, string file) => Guard.Run(file, "writing its work for a calendar", () => AppointmentFile.Write(plantings));

    private static void WriteTimeline(InputFile file, Assessment assessment, string path, OutputFolder? folder, PictureFormat form, UnitSystem measures, InputSearch search, Terminal terminal)
    {
        var subject = new DrawingSubject(assessment.State, assessment.Findings);
        var picture = Guard.Run(file.Name, "drawing its year", () => PictureFile.Render(TimelinePlate.Draw(subject, new DrawingOptions { Units = measures }), form, PdfPage.Drawing));
        if (folder is not null)
        {
            folder.Write(file, $"-timeline.{PictureFile.Word(form)}", picture);
        }
        else
        {
            Delivery.Write(path, picture, search.Files, terminal);
        }
    }

    private static void WriteReport(ImmutableArray<Assessment> plantings, FileRun run, AgendaOrder order, string? path, bool isJson, InputSearch search, Terminal terminal)
    {
        using var page = new MemoryStream();
        if (isJson)
        {
            AgendaJson.Write(plantings, run.Troubles, page);
        }
        else
        {
            using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
            foreach (var planting in plantings)
            {
                AgendaText.Write(planting, order, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
            }
        }

        Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
    }

    private static OutputFolder? FolderOf(string? path, int results, InputSearch search, Terminal terminal) =>
        path is not (null or InputFile.StandardInput) && OutputFolder.IsMeant(path, terminal.Folder, results) ? new OutputFolder(path, search.Files, terminal) : null;
}
