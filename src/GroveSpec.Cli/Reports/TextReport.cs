using GroveSpec.Checks;
using GroveSpec.Cli.Terminals;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes findings for people: the line with the place marked under it, the sentence, the other places, and where to read on.</summary>
internal sealed class TextReport
{
    private const string Indent = "    ";

    /// <summary>The longest message that is shown whole, in UTF-16 code units; names in it may be of any length.</summary>
    private const int LongestMessage = 1200;

    private readonly CheckRun run;
    private readonly TextWriter writer;
    private readonly int width;
    private readonly bool isColoured;

    private TextReport(CheckRun run, TextWriter writer, int width, bool isColoured)
    {
        this.run = run;
        this.writer = writer;
        this.width = width;
        this.isColoured = isColoured;
    }

    /// <summary>Writes a run.</summary>
    /// <param name="run">What to tell.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many cells fit into a line.</param>
    /// <param name="isColoured">Whether to use colour beside the words.</param>
    /// <param name="isExplaining">Whether to explain, at the end, each check that found something.</param>
    public static void Write(CheckRun run, TextWriter writer, int width, bool isColoured, bool isExplaining)
    {
        var report = new TextReport(run, writer, width, isColoured);
        foreach (var file in run.Files)
        {
            report.WriteFile(file);
        }

        if (isExplaining)
        {
            report.WriteExplanations();
        }

        report.WriteSummary(isExplaining);
    }

    private void WriteFile(CheckedFile file)
    {
        writer.Write(Bold(HarmlessText.OneLine(file.Name)));
        writer.Write($": {file.Trunks} {(file.Trunks == 1 ? "trunk" : "trunks")}");
        writer.Write(file.Standing == file.Trunks ? "" : $", {file.Standing} standing");
        if (file.Day is { } day)
        {
            writer.Write($" as on {IsoDay.Of(day)}");
        }

        writer.Write(file.Findings.IsEmpty ? ", nothing to report\n" : $", {Counts(file)}\n");
        foreach (var finding in file.Findings)
        {
            writer.Write('\n');
            WriteFinding(finding, file);
        }

        writer.Write('\n');
    }

    private void WriteFinding(Finding finding, CheckedFile file)
    {
        writer.Write($"  {Coloured(SeverityWords.Of(finding.Severity), finding.Severity)} {Bold(finding.Check.Name)}, {Where(finding.Place.File, finding.Place, file)}\n");
        if (run.Sources.Find(finding.Place.File) is { Length: > 0 } text)
        {
            var excerpt = SourceExcerpt.Of(text, finding.Place.Span, width - Indent.Length);
            if (excerpt.Line.Length > 0)
            {
                writer.Write($"{Indent}{excerpt.Line}\n{Indent}{Coloured(excerpt.Mark, finding.Severity)}\n");
            }
        }

        WriteWrapped(HarmlessText.OneLine(HarmlessText.Shorten(finding.Message, LongestMessage)), "  ");
        foreach (var related in finding.Related)
        {
            WriteWrapped($"{Where(related.Place.File, related.Place, file)}: {HarmlessText.OneLine(HarmlessText.Shorten(related.Message, LongestMessage))}", "  · ");
        }

        if (finding.Untold > 0)
        {
            WriteWrapped($"{finding.Untold} more of {finding.Check.Name} weigh less and are not told.", "  ");
        }
    }

    private void WriteExplanations()
    {
        foreach (var check in run.Files.SelectMany(file => file.Findings).Select(finding => finding.Check).DistinctBy(check => check.Name).OrderBy(check => check.Name, StringComparer.Ordinal))
        {
            writer.Write(Bold(check.Name) + "\n");
            WriteWrapped(check.Meaning, "  ");
            WriteWrapped(check.Explanation, "  ");
            WriteWrapped($"Source: {check.Source}. Page: {check.Page}", "  ");
            writer.Write('\n');
        }
    }

    private void WriteSummary(bool isExplaining)
    {
        var told = run.Files.Sum(file => file.Findings.Length);
        if (told == 0)
        {
            return;
        }

        if (run.Files.Length > 1)
        {
            var parts = new[] { Severity.Error, Severity.Warning, Severity.Hint }
                .Select(severity => (Severity: severity, Count: run.Files.Sum(file => file.Count(severity))))
                .Where(part => part.Count > 0)
                .Select(part => SeverityWords.Count(part.Count, part.Severity));
            writer.Write($"{run.Files.Length} files: {string.Join(", ", parts)}.\n");
        }

        if (!isExplaining)
        {
            WriteWrapped("Why each of these matters, and what can be done: run this again with --explain.", "");
        }
    }

    private static string Counts(CheckedFile file)
    {
        var parts = new List<string>();
        foreach (var severity in (ReadOnlySpan<Severity>)[Severity.Error, Severity.Warning, Severity.Hint])
        {
            if (file.Count(severity) is var count and > 0)
            {
                parts.Add(SeverityWords.Count(count, severity));
            }
        }

        return string.Join(", ", parts);
    }

    private string Where(string name, Syntax.Text.SourceSpan place, CheckedFile file)
    {
        var line = $"line {run.Sources.RangeOf(place).Start.Line + 1}";
        return name == file.Name ? line : $"{line} of {HarmlessText.OneLine(name)}";
    }

    private void WriteWrapped(string text, string indent) => Paragraph.Write(writer, text, indent, width);

    private string Bold(string text) => isColoured ? $"\u001b[1m{text}\u001b[0m" : text;

    // The terminal's own red, yellow and blue, so that they read on its own background.
    private string Coloured(string text, Severity severity) => !isColoured ? text : severity switch
    {
        Severity.Error => $"\u001b[31m{text}\u001b[0m",
        Severity.Warning => $"\u001b[33m{text}\u001b[0m",
        _ => $"\u001b[34m{text}\u001b[0m",
    };
}
