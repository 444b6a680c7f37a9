using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Binding.Tests;

public sealed class AssessmentTests
{
    /// <summary>The complete file of the language's description.</summary>
    private const string SaltBank = """
        # Seven larches on a stone slab: low and burnt on the sea side, tall in the lee
        planting  "Salt Bank"
        habit     group                          # group: separate trees · clump: one root base · raft: one laid trunk
        species   larix-kaempferi
        container slab (-230,-90) (-120,-150) (90,-140) (240,-40) (180,120) (-40,150) (-210,80) mm, 22 mm deep
        site      latitude 54.3 N, zone 8b, last frost 2 May, first frost 9 Nov
        viewed    from 180 deg, at 1100 mm, eye 160 mm, near
        concept   "The bank rises away from the sea. What the salt reaches stays low and thick; what it misses runs up."

        trunk A   at -68, -31 mm   diameter 33 mm   height 260 mm   role windward   raised 2014
        trunk B   at 22, 18 mm     girth 88 mm      height 410 mm   role main       lean 7 deg toward 65 deg
        trunk C   at 71, 52 mm     diameter 19 mm   height 335 mm   role lee
        trunk D   at -14, 66 mm    diameter 14 mm   height 240 mm   role lee        crown 80 mm
        trunk E   at 118, -9 mm    diameter 12 mm   height 205 mm   role lee
        trunk F   at -121, 24 mm   diameter 16 mm   height 150 mm   role windward   removed 2026-03-14
        trunk G                    diameter 9 mm    height 170 mm   role lee        planned spring 2028

        tape      A to B 102.5 mm                # centre to centre; "between bark" for a gap read with calipers
        tape      G to B 78.5 mm                 # G has no "at": three readings place it
        tape      G to C 60 mm
        tape      G to D 53.5 mm

        role windward { form stout    vigour restrain  aim diameter 38 mm by 2031   story "clipped by salt every winter" }
        role main     {               vigour push      aim diameter 40 mm by 2030   rank 1 }
        role lee      { form slender  vigour steady    keep diameter under 22 mm }

        task W1   wire      on B C    in late autumn 2026     with aluminium 3.5 mm, coil 50 deg, span 40 to 260 mm, bend 12 deg toward 90 deg over 120 mm
        task L1   look-over of W1     every 2 weeks until U1
        task U1   unwire    of W1     6 to 8 weeks after W1
        task R1   disbud    on all    after leaf-out 2027     "keep the outward buds"
        task P1   pinch     on C D    every 3 weeks, from harden-off 2027 to midsummer 2027
        task S1   sacrifice on B      from leaf-out 2027 to leaf-fall 2029    low, facing back
        task S2   remove-sacrifice of S1   in late winter 2030
        task T1   repot     on all    in early spring 2028, before bud-break 2028

        measured 2026-10-30 {
          A  diameter 33.1 mm   height 258 mm
          B  girth 89 mm        height 408 mm
        }

        tolerance even-gaps 8 %
        accept    three-in-line A B C   because "the sea wall runs along them"
        """;

    [Fact]
    public void The_complete_example_binds_without_an_error()
    {
        var assessment = Planted.Of(SaltBank);
        Assert.True(assessment.Findings.All(finding => finding.Check.IsComposition || finding.Check.Name == "wire-too-thin"), Planted.All(assessment));
        Assert.Equal(7, assessment.Planting.Trunks.Length);
        Assert.Equal(8, assessment.Planting.Tasks.Length);
        Assert.Equal("2026-10-30", assessment.Date?.ToString("uuuu-MM-dd", null));
    }

    private const string Taped = """
        planting "Taped"
        habit group
        species larix-kaempferi
        container oval 420 x 240 x 40 mm
        trunk A at -90, 10 mm diameter 12 mm
        trunk B at 60, -30 mm diameter 12 mm
        trunk C at 10, 70 mm diameter 12 mm
        trunk D at 120, 60 mm diameter 12 mm
        trunk E at -40, -50 mm diameter 12 mm
        trunk F diameter 12 mm
        tape A to F 260.1 mm
        tape B to F 115.1 mm
        tape C to F 173.1 mm
        tape D to F 75.1 mm
        tape E to F 216.8 mm

        """;

    [Theory]
    [InlineData("tape B to F 115.1 mm", "tape B to F 155.1 mm", 170, 4)]
    [InlineData("trunk D at 120, 60 mm", "trunk D at 80, 60 mm", 170, 4)]
    [InlineData("tape B to F 115.1 mm", "tape B to F 115.2 mm", 170, 4)]
    public void A_reading_or_a_place_that_is_off_moves_no_trunk_that_the_others_place(string right, string wrong, double x, double y)
    {
        var assessment = Planted.Of(Taped.Replace(right, wrong, StringComparison.Ordinal));
        var place = assessment.State.Trunks.Single(trunk => trunk.Name == "F").Place!.Value;
        Assert.InRange(place.DistanceTo(PlanPoint.FromMillimetres(x, y)).Millimetres, 0, 0.5);
        Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name == "off-container");
    }
}
