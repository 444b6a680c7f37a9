using System.Xml.Linq;
using GroveSpec.Checks;
using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using GroveSpec.Conformance.Tests.Stands;
using GroveSpec.Craft.Stand;
using GroveSpec.Model.States;
using Xunit;

namespace GroveSpec.Conformance.Tests;

/// <summary>
/// Stands that grew by themselves, taken the whole way as files. The values to meet were computed with R 4.2.2 and spatstat,
/// and are met to half of their last printed digit.
/// </summary>
public sealed class RealStandTests
{
    [Fact]
    public void Sixty_five_Japanese_pines_stand_as_far_apart_as_R_says() => MeanNearestIs(RealStand.JapanesePines, 65, 0.0659866, 5e-8);

    [Fact]
    public void Sixty_two_redwoods_stand_as_far_apart_as_R_says() => MeanNearestIs(RealStand.Redwood, 62, 0.0392843, 5e-8);

    [Fact]
    public void Seventy_one_Swedish_pines_stand_as_far_apart_as_R_says() => MeanNearestIs(RealStand.SwedishPines, 71, 7.907541, 5e-7);

    [Fact]
    public void A_hundred_and_twenty_six_Finnish_pines_stand_as_far_apart_as_R_says() => MeanNearestIs(RealStand.FinnishPines, 126, 0.396437, 5e-7);

    [Fact]
    public void Finnish_pines_are_as_thick_as_R_says()
    {
        var standing = Standing(RealStand.FinnishPines);
        var mean = StandMeasures.MeanDiameter([.. standing.Select(trunk => trunk.Diameter!.Value.Value)])!.Value;
        Assert.Equal(2.53175, mean.Millimetres / RealStand.FinnishPines.MillimetresPerCentimetre, 5e-6);
    }

    private static void MeanNearestIs(RealStand stand, int count, double expected, double tolerance)
    {
        var standing = Standing(stand);
        Assert.Equal(count, standing.Length);
        var mean = StandMeasures.MeanNearestDistance([.. standing.Select(trunk => trunk.Place!.Value)])!.Value;
        Assert.Equal(expected, mean.Millimetres / stand.MillimetresPerUnit, tolerance);
    }

    private static TrunkState[] Standing(RealStand stand)
    {
        using var scratch = new ScratchFolder();
        var path = scratch.Write(stand.Name + ".grove", stand.Text());
        var assessment = Plates.AssessmentOfFile(path);
        Assert.Empty(assessment.Tree.Problems);
        Assert.DoesNotContain(assessment.Findings, finding => finding.Severity == Severity.Error && finding.Check.Name is not ("touching" or "off-container"));
        var subject = Plates.SubjectOfFile(path);
        foreach (var view in new[] { "plan", "front" })
        {
            Assert.Equal("svg", XElement.Parse(Plates.Draw(view, subject)).Name.LocalName);
        }

        return [.. assessment.State.Standing];
    }
}
