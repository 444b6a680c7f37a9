using System.Diagnostics;
using System.Text;
using Xunit;

namespace GroveSpec.Conformance.Tests.Outside;

/// <summary>A program of the system, such as a browser.</summary>
/// <param name="Name">The name it is started by.</param>
/// <param name="Package">The Debian package that holds it.</param>
internal sealed record OutsideProgram(string Name, string Package)
{
    /// <summary>The browser.</summary>
    public static readonly OutsideProgram Chromium = new("chromium", "chromium");

    /// <summary>The second renderer of SVG.</summary>
    public static readonly OutsideProgram Librsvg = new("rsvg-convert", "librsvg2-bin");

    /// <summary>R.</summary>
    public static readonly OutsideProgram R = new("Rscript", "r-base-core");

    /// <summary>Node, which runs a library of npm.</summary>
    public static readonly OutsideProgram Node = new("node", "nodejs");

    /// <summary>The system's own Python, which is the one that Debian's packages are for.</summary>
    public static readonly OutsideProgram Python = new("/usr/bin/python3", "python3-vobject");

    /// <summary>Skips the test, with the reason, where the program is not installed.</summary>
    public void Require() => Assert.SkipUnless(IsThere, $"{Name} is not installed (Debian: apt-get install {Package})");

    private bool IsThere => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Any(folder => folder.Length > 0 && File.Exists(Path.Combine(folder, Name)));

    /// <summary>Runs it.</summary>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="variables">Variables of its surroundings, beside those of this process.</param>
    /// <returns>What it wrote to standard output and to standard error.</returns>
    /// <exception cref="InvalidOperationException">It failed, or ran longer than three minutes.</exception>
    public (string Output, string Errors) Run(IEnumerable<string> arguments, params (string Name, string Value)[] variables)
    {
        var start = new ProcessStartInfo(Name, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            UseShellExecute = false,
        };
        foreach (var (name, value) in variables)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(TimeSpan.FromMinutes(3)))
        {
            process.Kill(entireProcessTree: true);
            throw new InvalidOperationException($"{Name} did not end within three minutes.");
        }

        process.WaitForExit();
        return process.ExitCode == 0
            ? (output.GetAwaiter().GetResult(), errors.GetAwaiter().GetResult())
            : throw new InvalidOperationException($"{Name} ended with {process.ExitCode}: {errors.GetAwaiter().GetResult()}");
    }
}
