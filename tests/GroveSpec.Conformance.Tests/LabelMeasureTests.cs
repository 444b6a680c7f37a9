using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using Xunit;

namespace GroveSpec.Conformance.Tests;

/// <summary>The measure of labels can fail.</summary>
public sealed class LabelMeasureTests
{
    [Fact]
    public void The_measure_notices_labels_that_overlap_and_labels_that_leave()
    {
        OutsideProgram.Chromium.Require();
        const string Drawing = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100" width="200" height="100">
            <text x="10" y="40" font-size="12">larch</text><text x="20" y="44" font-size="12">beech</text>
            <text x="180" y="80" font-size="12">hornbeam</text>
            <text x="10" y="70" font-size="12" transform="rotate(-30 10 70)">fig</text><text x="60" y="70" font-size="12">elm</text>
            </svg>
            """;
        var (troubles, count, _) = LabelMeasure.Of([("a drawing", Drawing)], "EB Garamond");
        Assert.Equal(5, count);
        Assert.Collection(
            troubles,
            trouble => Assert.StartsWith("a drawing, set in EB Garamond: \"larch\" and \"beech\" overlap", trouble, StringComparison.Ordinal),
            trouble => Assert.StartsWith("a drawing, set in EB Garamond: \"hornbeam\" leaves the page", trouble, StringComparison.Ordinal));
    }
}
