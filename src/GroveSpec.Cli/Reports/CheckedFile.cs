using System.Collections.Immutable;
using GroveSpec.Checks;
using NodaTime;

namespace GroveSpec.Cli.Reports;

/// <summary>A file and what was found in it.</summary>
/// <param name="Name">Its path as the person sees it.</param>
/// <param name="Day">The day it was judged on; null for none in particular.</param>
/// <param name="Trunks">How many trunks it names.</param>
/// <param name="Standing">How many of them stand on that day.</param>
/// <param name="Findings">What was found, in the order to tell it.</param>
internal sealed record CheckedFile(string Name, LocalDate? Day, int Trunks, int Standing, ImmutableArray<Finding> Findings)
{
    /// <summary>How many findings weigh so much.</summary>
    /// <param name="severity">How much.</param>
    /// <returns>The number, with those left untold.</returns>
    public int Count(Severity severity)
    {
        var count = 0;
        foreach (var finding in Findings)
        {
            count += finding.Severity == severity ? 1 + finding.Untold : 0;
        }

        return count;
    }
}
