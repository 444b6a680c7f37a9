using GroveSpec.Checks;
using GroveSpec.Cli.Terminals;
using GroveSpec.Syntax.Text;

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
            writer.Write(LineOf(finding, run.Sources));
            writer.Write('\n');
        }
    }

    /// <summary>Writes a finding.</summary>
    /// <param name="finding">What to tell.</param>
    /// <param name="sources">The texts it lies in.</param>
    /// <returns>The line, without its end; line and column count from 1, the column in UTF-16 code units.</returns>
    public static string LineOf(Finding finding, SourceLibrary sources)
    {
        var start = sources.RangeOf(finding.Place).Start;
        return $"{HarmlessText.OneLine(finding.Place.File)}:{start.Line + 1}:{start.Character + 1}: {SeverityWords.Of(finding.Severity)}: {HarmlessText.OneLine(finding.Message)} [{finding.Check.Name}]";
    }
}
