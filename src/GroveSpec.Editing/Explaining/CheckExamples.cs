using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Drawing;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Explaining;

/// <summary>The examples that the pages of checks show, drawn small.</summary>
internal static class CheckExamples
{
    private const string Begin = "```grove\n";
    private const string End = "\n```";

    /// <summary>The sketch of a check's example.</summary>
    /// <param name="check">The check's name.</param>
    /// <returns>A whole SVG document; null where there is nothing to be seen, as of checks that are about the file.</returns>
    public static string? Sketch(string check)
    {
        if (Example(check) is not { } example)
        {
            return null;
        }

        var assessment = Assessment.Of("example.grove", SourceText.FromText(example), new NoFiles());
        return assessment.Findings.FirstOrDefault(finding => finding.Check.Name == check) is { } finding
            ? CheckSketch.Draw(assessment.State, finding)
            : null;
    }

    private static string? Example(string check)
    {
        using var stream = typeof(CheckExamples).Assembly.GetManifestResourceStream($"checks/{check}.md");
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream);
        var page = reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
        var start = page.IndexOf(Begin, StringComparison.Ordinal);
        var end = start < 0 ? -1 : page.IndexOf(End, start, StringComparison.Ordinal);
        return end < 0 ? null : page[(start + Begin.Length)..end] + "\n";
    }
}
