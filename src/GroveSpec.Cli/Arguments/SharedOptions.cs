using System.CommandLine;
using GroveSpec.Binding.Quantities;
using GroveSpec.Cli.Terminals;
using GroveSpec.Model.Quantities;
using NodaTime;

namespace GroveSpec.Cli.Arguments;

/// <summary>Options that several commands share, and how their values are read.</summary>
internal static class SharedOptions
{
    /// <summary>Where to write.</summary>
    /// <returns>The option <c>--output</c>.</returns>
    public static Option<string?> Output() => new("--output") { HelpName = "PATH" };

    /// <summary>The day to judge and to show.</summary>
    /// <returns>The option <c>--on</c>.</returns>
    public static Option<string?> On() => new("--on") { HelpName = "DATE" };

    /// <summary>The units to speak in.</summary>
    /// <returns>The option <c>--units</c>.</returns>
    public static Option<string?> Units() => new("--units") { HelpName = "metric|inch" };

    /// <summary>Whether warnings fail the run.</summary>
    /// <returns>The option <c>--strict</c>.</returns>
    public static Option<bool> Strict() => new("--strict");

    /// <summary>Reads a day.</summary>
    /// <param name="written">What stands behind <c>--on</c>; null where it was left out.</param>
    /// <returns>The day, or null for none in particular.</returns>
    /// <exception cref="UsageException">It is no day of the calendar.</exception>
    public static LocalDate? ReadDay(string? written) => written is null ? null
        : WrittenDay.Read(written)
        ?? throw new UsageException($"--on needs a day such as 2027-05-31; {Shown(written)} is none.");

    /// <summary>Reads a system of units.</summary>
    /// <param name="written">What stands behind <c>--units</c>; null where it was left out.</param>
    /// <returns>The units; millimetres where nothing was said.</returns>
    /// <exception cref="UsageException">There are no such units.</exception>
    public static UnitSystem ReadUnits(string? written) => Choose("--units", written ?? "metric", [("metric", UnitSystem.Metric), ("inch", UnitSystem.Inch)]);

    /// <summary>Reads a length that a tape could tell.</summary>
    /// <param name="option">The option's name.</param>
    /// <param name="written">What stands behind it, such as 18mm, "18 mm" or 0.7in; a bare number is in millimetres, or in inches for who works in those. Null where it was left out.</param>
    /// <param name="units">The units to work in.</param>
    /// <returns>The length, or null for none.</returns>
    /// <exception cref="UsageException">It is no length, or none that a trunk could have.</exception>
    public static Length? ReadLength(string option, string? written, UnitSystem units)
    {
        return written is null ? null
            : WrittenLength.Read(written, units)
            ?? throw new UsageException($"{option} needs a length of at least {WrittenLength.Shortest}, such as 18mm or 0.7in; {Shown(written)} is none.");
    }

    /// <summary>Reads an angle above zero.</summary>
    /// <param name="option">The option's name.</param>
    /// <param name="written">What stands behind it, such as 10 or 10deg. Null where it was left out.</param>
    /// <param name="mostDegrees">The largest that may be meant.</param>
    /// <returns>The angle, or null for none.</returns>
    /// <exception cref="UsageException">It is no angle, or too large a one.</exception>
    public static Angle? ReadAngle(string option, string? written, double mostDegrees) => written is null ? null
        : WrittenAngle.Read(written, mostDegrees)
        ?? throw new UsageException($"{option} needs an angle above zero and up to {mostDegrees:0} such as 10 or 10deg; {Shown(written)} is none.");

    /// <summary>Reads one of a few words.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="option">The option's name.</param>
    /// <param name="written">What stands behind it.</param>
    /// <param name="choices">The words and what each stands for.</param>
    /// <returns>What the word stands for.</returns>
    /// <exception cref="UsageException">It is none of the words.</exception>
    public static T Choose<T>(string option, string written, ReadOnlySpan<(string Word, T Meaning)> choices)
    {
        var words = new List<string>();
        foreach (var (word, meaning) in choices)
        {
            if (word == written)
            {
                return meaning;
            }

            words.Add(word);
        }

        var near = NearWord.Find(written, words) is { } found ? $" Did you mean {found}?" : "";
        throw new UsageException($"{option} can be {string.Join(", ", words.SkipLast(1))} or {words[^1]}; {Shown(written)} is none of them.{near}");
    }

    private static string Shown(string text) => $"“{HarmlessText.Shorten(HarmlessText.OneLine(text), 60)}”";
}
