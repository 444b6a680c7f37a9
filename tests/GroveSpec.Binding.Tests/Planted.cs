using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Syntax.Text;
using NodaTime;

namespace GroveSpec.Binding.Tests;

/// <summary>Assesses texts in tests.</summary>
internal static class Planted
{
    /// <summary>A head that says all that would otherwise be taken as usual.</summary>
    public const string Head = """
        planting "Test"
        habit group
        container oval 400 x 300 x 40 mm
        viewed from 180 deg

        """;

    public static Assessment Of(string text, IFileReader? reader = null, LocalDate? date = null) =>
        Assessment.Of("test.grove", SourceText.FromText(text), reader ?? new NoFiles(), date);

    public static Assessment Under(string text, IFileReader? reader = null, LocalDate? date = null) => Of(Head + text, reader, date);

    /// <summary>The findings of one check.</summary>
    public static Finding[] Found(this Assessment assessment, string check) => [.. assessment.Findings.Where(finding => finding.Check.Name == check)];

    /// <summary>The one finding of a check.</summary>
    public static Finding Only(this Assessment assessment, string check)
    {
        var found = assessment.Found(check);
        return found.Length == 1 ? found[0] : throw new InvalidOperationException($"{found.Length} findings of {check}; all: {All(assessment)}");
    }

    /// <summary>The text that a finding underlines.</summary>
    public static string Underlined(this Assessment assessment, Finding finding) => assessment.TextOf(finding.Place.File).Slice(finding.Place.Span);

    /// <summary>The text after the first remedy of a finding.</summary>
    public static string Mended(this Assessment assessment, Finding finding, int remedy = 0)
    {
        var text = assessment.Tree.Text.Content;
        foreach (var edit in finding.Remedies[remedy].Edits.OrderByDescending(edit => edit.Place.Span.Start))
        {
            text = text[..edit.Place.Span.Start] + edit.NewText + text[edit.Place.Span.End..];
        }

        return text;
    }

    public static string All(Assessment assessment) => string.Join("\n", assessment.Findings.Select(finding => $"{finding.Place.File}:{finding.Place.Span.Start} {finding.Severity}: {finding.Message} [{finding.Check.Name}]"));
}
