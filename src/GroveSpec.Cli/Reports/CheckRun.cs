using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Cli.Files;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Reports;

/// <summary>All that one run of <c>check</c> has to tell.</summary>
/// <param name="Files">The files that were read, in their order.</param>
/// <param name="Troubles">What could not be read.</param>
/// <param name="Sources">The texts of all files that findings lie in.</param>
/// <param name="IsStrict">Whether warnings fail the run.</param>
internal sealed record CheckRun(ImmutableArray<CheckedFile> Files, ImmutableArray<FileTroubleException> Troubles, SourceLibrary Sources, bool IsStrict)
{
    /// <summary>How the run ends.</summary>
    public ExitStatus Status => !Troubles.IsEmpty ? ExitStatus.Files : Files.Any(file => file.Findings.Any(finding => Fails(finding, IsStrict))) ? ExitStatus.Findings : ExitStatus.Good;

    /// <summary>Whether a finding fails a run.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="isStrict">Whether warnings do.</param>
    /// <returns>True for errors, and for warnings of a strict run.</returns>
    public static bool Fails(Finding finding, bool isStrict) => finding.Severity == Severity.Error || (isStrict && finding.Severity == Severity.Warning);
}
