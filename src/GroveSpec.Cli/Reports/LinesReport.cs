using GroveSpec.Cli.Terminals;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes findings as lines <c>path:line:column: severity: message [check]</c>, as GNU programs do, for editors and scripts.</summary>
internal static class LinesReport
{
    /// <summary>Writes a run.</summary>
    /// <param name="run">What to tell.</param>
    /// <param name="writer">Where to.</param>
    public static void Write(CheckRun run, TextWriter writer)
    {
        foreach (var finding in run.Files.SelectMany(file => file.Findings))
        {
            var start = run.Sources.RangeOf(finding.Place).Start;
            writer.Write(HarmlessText.OneLine(finding.Place.File));
            writer.Write(':');
            writer.Write(start.Line + 1);
            writer.Write(':');
            writer.Write(start.Character + 1);
            writer.Write(": ");
            writer.Write(SeverityWords.Of(finding.Severity));
            writer.Write(": ");
            writer.Write(HarmlessText.OneLine(finding.Message));
            writer.Write(" [");
            writer.Write(finding.Check.Name);
            writer.Write("]\n");
        }
    }
}
