using CsCheck;
using Xunit;

namespace GroveSpec.Checks.Tests;

/// <summary>What may not decide what is found: the order of a file's lines, the mark that places are measured from, and the side from which the plan is drawn.</summary>
public sealed class OrderAndPlaceTests
{
    private static readonly string[] OfThePlan =
    [
        "three-in-line", "even-gaps", "twin-diameters", "twin-heights", "wide-but-short", "thin-but-tall", "centred-main", "even-count", "touching", "near-rim", "off-container",
    ];

    [Fact]
    public void The_order_of_the_lines_changes_no_finding_of_two_hundred_plantings_with_ties()
    {
        Gen.Select(GeneratedPlanting.Any, Gen.Int[0, 1 << 30]).Sample(
            (planting, seed) => Assert.Equal(Told(planting, withMessage: true), Told(planting.Shuffled(seed), withMessage: true)),
            iter: 200);
    }

    [Fact]
    public void The_order_of_the_lines_changes_no_finding_of_a_full_lattice()
    {
        // A lattice has more than the forty worst of a kind that are looked at, all of them as bad as each other.
        var lattice = new GeneratedPlanting([.. Enumerable.Range(0, 96).Select(index => new GeneratedTrunk($"T{index}", (index % 12 * 40) - 220, (index / 12 * 40) - 140, 16, 120, null))]);
        var expected = Told(lattice, withMessage: true);
        Assert.Contains(expected, line => line.StartsWith("three-in-line", StringComparison.Ordinal) && line.Contains("more of this kind", StringComparison.Ordinal));
        Assert.All(Enumerable.Range(1, 20), seed => Assert.Equal(expected, Told(lattice.Shuffled(seed), withMessage: true)));
    }

    [Fact]
    public void A_quarter_turn_with_the_viewpoint_changes_no_finding()
    {
        GeneratedPlanting.Any.Sample(
            planting =>
            {
                var expected = Told(planting);
                var turned = planting.Turned();
                Assert.Equal(expected, Told(turned));
                Assert.Equal(expected, Told(turned.Turned()));
                Assert.Equal(expected, Told(turned.Turned().Turned()));
            },
            iter: 200);
    }

    [Fact]
    public void A_looking_glass_changes_no_finding_of_the_plan()
    {
        GeneratedPlanting.Any.Sample(planting => Assert.Equal(Told(planting, OfThePlan), Told(planting.Mirrored(), OfThePlan)), iter: 200);
    }

    [Fact]
    public void Another_mark_to_measure_from_changes_no_finding_of_the_plan()
    {
        Gen.Select(GeneratedPlanting.Any, Gen.Int[-900_000, 900_000], Gen.Int[-900_000, 900_000]).Sample(
            (planting, x, y) =>
            {
                // Far from the mark the place of a rim that is no straight line is known to a nanometre, and so a share of it.
                var (expected, moved) = (Findings(planting, OfThePlan), Findings(planting.MeasuredFrom(x, y), OfThePlan));
                Assert.Equal(expected.Select(Fact), moved.Select(Fact));
                Assert.All(expected.Zip(moved), pair => Assert.Equal(pair.First.Measured!.Value, pair.Second.Measured!.Value, 1e-5));
            },
            iter: 200);
    }

    private static string Fact(Finding finding) => $"{finding.Check.Name}: {string.Join(' ', finding.Trunks)}, {finding.Untold} untold";

    private static List<string> Told(GeneratedPlanting planting, IReadOnlyCollection<string>? checks = null, bool withMessage = false) =>
    [
        .. Findings(planting, checks).Select(finding => $"{Fact(finding)} {finding.Measured:R}" + (withMessage ? " " + finding.Message : "")),
    ];

    private static List<Finding> Findings(GeneratedPlanting planting, IReadOnlyCollection<string>? checks)
    {
        var findings = Check.Of(planting.Text).Findings;
        Assert.DoesNotContain(findings, finding => finding.Check.Name is "broken-check" or "not-understood");
        return [.. findings.Where(finding => finding.Check.IsComposition && checks?.Contains(finding.Check.Name) != false)];
    }
}
