namespace GroveSpec.Checks.Tests;

/// <summary>Sources for the checks of care: one species on one site, two trunks, and the tasks that are asked about.</summary>
internal static class CareSource
{
    /// <summary>Last frost 20 April, first frost 28 October.</summary>
    public const string North = "site latitude 50 N, last frost 20 April, first frost 28 October";

    /// <summary>Last frost 2 October, first frost 14 May.</summary>
    public const string South = "site latitude 41 S, last frost 2 October, first frost 14 May";

    /// <summary>A source.</summary>
    /// <param name="species">The species of all trunks.</param>
    /// <param name="tasks">The statements to ask about; trunk A plays the role quiet where they describe it.</param>
    /// <param name="site">The site's statement.</param>
    /// <returns>The text.</returns>
    public static string Of(string species, string tasks, string site = North) => $"""
        planting "Test"
        habit group
        species {species}
        container rectangle 600 x 400 x 40 mm
        {site}
        viewed from 180 deg, at 1500 mm, eye 200 mm
        trunk A at -120, 40 mm diameter 30 mm height 300 mm{(tasks.Contains("role quiet", StringComparison.Ordinal) ? " role quiet" : "")}
        trunk B at 90, -30 mm diameter 18 mm height 210 mm
        {tasks}

        """;

    /// <summary>That a check tells something of a source.</summary>
    /// <param name="check">The check.</param>
    /// <param name="source">The source.</param>
    /// <returns>The finding.</returns>
    public static Finding Hit(string check, string source) => Xunit.Assert.Single(Check.Findings(check, source));

    /// <summary>That it tells nothing.</summary>
    /// <param name="check">The check.</param>
    /// <param name="source">The source.</param>
    public static void Miss(string check, string source) => Xunit.Assert.Empty(Check.Findings(check, source));

    /// <summary>A source after a remedy.</summary>
    /// <param name="source">The source.</param>
    /// <param name="remedy">The remedy.</param>
    /// <returns>The new text.</returns>
    public static string Mended(string source, Remedy remedy)
    {
        foreach (var edit in remedy.Edits.OrderByDescending(edit => edit.Place.Span.Start))
        {
            source = source[..edit.Place.Span.Start] + edit.NewText + source[edit.Place.Span.End..];
        }

        return source;
    }
}
