namespace GroveSpec.Benchmarks;

/// <summary>Reads the words of the command line, and finds the programs that they or the comparisons name.</summary>
internal static class CommandWords
{
    /// <summary>The word behind an option.</summary>
    /// <param name="words">All words.</param>
    /// <param name="option">The option.</param>
    /// <returns>The word; null where the option or the word is missing.</returns>
    public static string? Behind(string[] words, string option)
    {
        var at = Array.IndexOf(words, option);
        return at >= 0 && at + 1 < words.Length ? words[at + 1] : null;
    }

    /// <summary>The native program that is measured.</summary>
    /// <param name="words">All words.</param>
    /// <returns>What <c>--program</c> names, else GROVESPEC_PROGRAM, else where the test command puts it.</returns>
    public static string ProgramOf(string[] words) =>
        Behind(words, "--program") ?? Environment.GetEnvironmentVariable("GROVESPEC_PROGRAM") ?? "artifacts/program/grovespec";

    /// <summary>Where a program lies.</summary>
    /// <param name="program">Its name.</param>
    /// <returns>Its path; null where no folder of PATH has it.</returns>
    public static string? FindOnPath(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .Select(folder => Path.Combine(folder, program))
        .FirstOrDefault(File.Exists);
}
