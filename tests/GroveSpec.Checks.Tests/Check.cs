using System.Collections.Immutable;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Checks.Tests;

/// <summary>The one way in which checks are tested: a source, and what is expected of one check.</summary>
internal static class Check
{
    /// <summary>A head with nothing in it that a check could stumble over.</summary>
    public const string Head = """
        planting "Test"
        habit group
        species larix-kaempferi
        container rectangle 600 x 400 x 40 mm
        viewed from 180 deg, at 1500 mm, eye 200 mm

        """;

    /// <summary>Everything that is found in a source.</summary>
    /// <param name="source">The source; a head is put before it unless it has one.</param>
    /// <param name="units">The units in which messages speak.</param>
    /// <returns>The assessment.</returns>
    public static Assessment Of(string source, UnitSystem units = UnitSystem.Metric) =>
        Assessment.Of("test.grove", SourceText.FromText(source.StartsWith("planting", StringComparison.Ordinal) ? source : Head + source), new NoFiles(), null, units);

    /// <summary>The findings of one check.</summary>
    /// <param name="check">The check's name.</param>
    /// <param name="source">As in <see cref="Of"/>.</param>
    /// <returns>Its findings, the worst first.</returns>
    public static ImmutableArray<Finding> Findings(string check, string source)
    {
        var assessment = Of(source);
        Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name is "broken-check" or "not-understood" or "odd-tolerance");
        return [.. assessment.Findings.Where(finding => finding.Check.Name == check)];
    }

    /// <summary>That a check finds just these sets of trunks, in any order.</summary>
    /// <param name="check">The check's name.</param>
    /// <param name="source">As in <see cref="Of"/>.</param>
    /// <param name="expected">The trunks of each finding, sorted by name and parted by spaces; none for no finding.</param>
    /// <returns>The findings.</returns>
    public static ImmutableArray<Finding> Expect(string check, string source, params string[] expected)
    {
        var findings = Findings(check, source);
        Assert.Equal(expected.Order(StringComparer.Ordinal), findings.Select(finding => string.Join(' ', finding.Trunks)).Order(StringComparer.Ordinal));
        return findings;
    }

    /// <summary>What a check says where it finds one thing.</summary>
    /// <param name="check">The check's name.</param>
    /// <param name="source">As in <see cref="Of"/>.</param>
    /// <param name="units">The units in which messages speak.</param>
    /// <returns>The message.</returns>
    public static string Message(string check, string source, UnitSystem units = UnitSystem.Metric) =>
        Assert.Single(Of(source, units).Findings, finding => finding.Check.Name == check).Message;
}
