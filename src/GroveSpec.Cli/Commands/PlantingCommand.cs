using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using NodaTime;

namespace GroveSpec.Cli.Commands;

/// <summary>
/// A command that finds something in each planting and tells it, for people or for programs; where it is asked, it draws what it found
/// and writes it into the file.
/// </summary>
/// <typeparam name="TAnswer">What is found in a planting.</typeparam>
internal abstract class PlantingCommand<TAnswer> : GroveCommand
{
    private readonly Option<bool> write = new("--write");
    private readonly Option<string?> picture = new("--picture") { HelpName = "PATH" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public sealed override IReadOnlyList<Option> Options => [.. OwnOptions, .. WhatIsWritten is null ? Array.Empty<Option>() : [write], picture, json, output, on, units, strict];

    /// <summary>The options that no other command of this kind has.</summary>
    protected virtual IReadOnlyList<Option> OwnOptions => [];

    /// <summary>What <c>--write</c> writes, in a word such as "moves"; null where there is nothing to write.</summary>
    protected virtual string? WhatIsWritten => null;

    /// <summary>What the pictures show, as a part of file names.</summary>
    protected abstract string PictureWord { get; }

    /// <summary>What is done, in words that the name of a file may follow, such as "looking for ground in".</summary>
    protected abstract string Doing { get; }

    /// <inheritdoc/>
    public sealed override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var find = ReadQuestion(parsed, measures);
        var search = InputSearch.Find(names, terminal.Folder);
        var day = SharedOptions.ReadDay(parsed.GetValue(on));
        var isWriting = WhatIsWritten is not null && parsed.GetValue(write);
        if (isWriting)
        {
            RefuseToWrite(day, search);
            if (path is not null)
            {
                // A planting that is written while its report cannot be would leave nobody knowing what was changed.
                Delivery.RefuseInputs(path, search.Files, terminal);
                OutputFile.Prove(path, terminal.Folder);
            }
        }

        var isJson = parsed.GetValue(json);
        var beside = PictureBeside.Of(parsed.GetValue(picture), PictureWord, path, isJson, search, terminal);
        var reading = new PlantingReading(terminal, day, measures);
        var run = new FileRun(search, terminal);
        var answers = ImmutableArray.CreateBuilder<(Assessment Planting, TAnswer Answer)>();
        var status = run.Each(Doing, file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State) && (search.Files.Count == 1 || IsAnswered(assessment)))
            {
                var answer = Guard.Run(file.Name, $"{Doing} it", () => find(assessment));
                answers.Add((assessment, answer));
                beside.Write(file, run, ObstacleTo(answer), () => Draw(assessment, answer, new DrawingOptions { Units = measures }));
                if (isWriting && Write(file, assessment, answer, run, terminal))
                {
                    // What was mended is not found any more, so the file is judged as it is now.
                    var anew = new PlantingReading(terminal, day, measures);
                    return run.Judge(anew.Read(file).Findings, anew.Sources, parsed.GetValue(strict));
                }
            }

            return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
        });

        if (answers.Count > 0 && answers.All(one => IsMisasked(one.Answer)))
        {
            // A name that is written wrongly must not pass for an answer in a script; where one planting of several has it, it is right.
            status = status > ExitStatus.Usage ? status : ExitStatus.Usage;
        }

        if (!beside.IsAlone)
        {
            using var page = new MemoryStream();
            if (isJson)
            {
                WriteJson(answers, run, reading.Sources, page);
            }
            else
            {
                using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
                foreach (var (planting, answer) in answers)
                {
                    WriteText(planting, answer, measures, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
                }
            }

            Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
        }

        return status;
    }

    /// <summary>Reads what is asked for.</summary>
    /// <param name="parsed">The options as read.</param>
    /// <param name="units">The units to work in.</param>
    /// <returns>What finds it in a planting.</returns>
    /// <exception cref="UsageException">It cannot be meant so.</exception>
    protected abstract Func<Assessment, TAnswer> ReadQuestion(ParseResult parsed, UnitSystem units);

    /// <summary>Why there is nothing to draw.</summary>
    /// <param name="answer">What was found.</param>
    /// <returns>A sentence; null where there is something.</returns>
    protected virtual string? ObstacleTo(TAnswer answer) => null;

    /// <summary>Whether the question cannot be meant of a planting, as where it names a trunk that is not there.</summary>
    /// <param name="answer">What was found; its obstacle tells it.</param>
    /// <returns>True where it cannot.</returns>
    protected virtual bool IsMisasked(TAnswer answer) => false;

    /// <summary>Draws what was found.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="answer">What was found in it, with no obstacle.</param>
    /// <param name="options">How.</param>
    /// <returns>An SVG document.</returns>
    protected abstract string Draw(Assessment planting, TAnswer answer, DrawingOptions options);

    /// <summary>What is written into the file.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="answer">What was found in it.</param>
    /// <returns>The edits, none where nothing is written, and what is told of them behind the file's name: parts of sentences.</returns>
    protected virtual (ImmutableArray<TextEdit> Edits, ImmutableArray<string> Told) Writing(Assessment planting, TAnswer answer) => ([], []);

    /// <summary>Refuses to write what cannot be written, before anything is read.</summary>
    /// <param name="day">The day that was given; null for none.</param>
    /// <exception cref="UsageException">It cannot be written.</exception>
    protected virtual void RefuseToWrite(LocalDate? day)
    {
    }

    /// <summary>Whether a file is one of those that are told of where several are read.</summary>
    /// <param name="planting">What is known of it.</param>
    /// <returns>True where it describes a planting.</returns>
    protected virtual bool IsAnswered(Assessment planting) => PlantingReading.IsPlanting(planting);

    /// <summary>Writes the report for programs.</summary>
    /// <param name="answers">What was found.</param>
    /// <param name="run">Knows what could not be read.</param>
    /// <param name="sources">The texts that were read.</param>
    /// <param name="page">Where to; it is left open.</param>
    protected abstract void WriteJson(IEnumerable<(Assessment Planting, TAnswer Answer)> answers, FileRun run, SourceLibrary sources, Stream page);

    /// <summary>Writes the report of one planting for people.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="units">The units to speak in.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    protected abstract void WriteText(Assessment planting, TAnswer answer, UnitSystem units, TextWriter writer, int width, bool isColoured);

    private void RefuseToWrite(LocalDate? day, InputSearch search)
    {
        if (search.Files.Any(file => file.IsStandardInput))
        {
            throw new UsageException($"Standard input cannot be written back; leave --write out, and the {WhatIsWritten} are told.");
        }

        RefuseToWrite(day);
    }

    private bool Write(InputFile file, Assessment planting, TAnswer answer, FileRun run, Terminal terminal)
    {
        var (edits, told) = Guard.Run(file.Name, "making what is written", () => Writing(planting, answer));
        if (!edits.IsEmpty)
        {
            OutputFile.Write(file.Name, terminal.Folder, SourceText.ToBytes(TextEdits.Apply(planting.Tree.Text.Content, edits)));
        }

        foreach (var one in told)
        {
            run.Tell($"{file.Name}: {one}.");
        }

        return !edits.IsEmpty;
    }
}
