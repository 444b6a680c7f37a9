using GroveSpec.Checks;

namespace GroveSpec.Cli.Reports;

/// <summary>How much a finding weighs, as a word.</summary>
internal static class SeverityWords
{
    /// <summary>The word that programs read.</summary>
    /// <param name="severity">How much it weighs.</param>
    /// <returns>The word in small letters.</returns>
    public static string Of(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "hint",
    };

    /// <summary>A number of findings in words.</summary>
    /// <param name="count">How many.</param>
    /// <param name="severity">How much they weigh.</param>
    /// <returns>Such as "1 error" or "3 hints".</returns>
    public static string Count(int count, Severity severity) => $"{count} {Of(severity)}{(count == 1 ? "" : "s")}";
}
