using System.Collections.Immutable;
using System.Xml.Linq;
using GroveSpec.Checks;
using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using GroveSpec.Conformance.Tests.Stands;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Stand;
using GroveSpec.Model.Quantities;
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

    public static TheoryData<string, double, double, double> SpacingByR() => new()
    {
        { "japanesepines", 1.064002, 1.007507, .5423 },
        { "redwood", 0.618650, 0.584991, .6411 },
        { "swedishpines", 1.360082, 1.291069, .5176 },
        { "finpines", 0.889998, 0.856386, .5595 },
    };

    [Theory]
    [MemberData(nameof(SpacingByR))]
    public void Each_real_stand_is_spaced_as_R_says_and_as_growers_are_told(string name, double naive, double donnelly, double angle)
    {
        var stand = StandOf(name);
        var described = StandDescription.Of(Plates.AssessmentOf("stand.grove", stand.Text()).State);
        Assert.Equal(naive, described.UncorrectedClarkEvans!.Value, 5e-7);
        Assert.Equal(donnelly, described.Index(StandIndexKind.ClarkEvans).Value!.Value, 5e-7);
        Assert.Equal(angle, described.Index(StandIndexKind.UniformAngle).Value!.Value, 5e-5);
        var told = NaturalStand.All.Single(one => one.DataSet == name);
        Assert.Equal((donnelly, angle, described.Stems.Length), (told.ClarkEvans, told.UniformAngle, told.Stems));
    }

    [Fact]
    public void Real_stands_are_told_from_chance_where_they_differ_from_it()
    {
        // Redwood seedlings are clustered, Swedish pines ordered and Japanese pines neither (spatstat.data's help on each).
        Assert.Equal(StandReading.Below, Spacing("redwood"));
        Assert.Equal(StandReading.Above, Spacing("swedishpines"));
        Assert.Equal(StandReading.CannotTell, Spacing("japanesepines"));

        static StandReading Spacing(string name) => StandDescription.Of(Plates.AssessmentOf("stand.grove", StandOf(name).Text()).State).Index(StandIndexKind.ClarkEvans).Reading;
    }

    [Fact]
    public void Finnish_pines_share_their_wood_and_differ_from_their_neighbours_as_R_says()
    {
        var standing = Standing(RealStand.FinnishPines);
        ImmutableArray<Length> diameters = [.. standing.Select(trunk => trunk.Diameter!.Value.Value)];
        Assert.Equal(.380330, GiniCoefficient.Of([.. diameters.Select(diameter => diameter.Millimetres)])!.Value, 5e-7);
        Assert.Equal(.604288, GiniCoefficient.OfBasalArea(diameters)!.Value, 5e-7);
        var differentiation = SizeIndices.Differentiation([.. standing.Select(trunk => trunk.Place!.Value)], [.. standing.Select(trunk => trunk.Height!.Value.Value)])!.Value;
        Assert.Equal(.36722, differentiation, 5e-6);
        var told = NaturalStand.All.Single(one => one.DataSet == "finpines");
        Assert.Equal((.604288, .36722), (told.BasalAreaGini, told.HeightDifferentiation));
    }

    // Observed and expected numbers of triples whose widest angle comes within one degree of the straight one: reference
    // values C, worked out by a program of its own on the same data. What is expected is C(n,3) · ε · E[L²]/A (Behrend).
    [Fact]
    public void Swedish_pines_have_as_many_lines_within_a_degree_as_was_counted_and_about_as_many_as_chance_gives() => LinesAre(RealStand.SwedishPines, 335, 332.8);

    [Fact]
    public void Japanese_pines_have_as_many_lines_within_a_degree_as_was_counted_and_about_as_many_as_chance_gives() => LinesAre(RealStand.JapanesePines, 233, 254.1);

    private static RealStand StandOf(string name) => new[] { RealStand.JapanesePines, RealStand.Redwood, RealStand.SwedishPines, RealStand.FinnishPines }.Single(stand => stand.Name == name);

    private static void LinesAre(RealStand stand, int observed, double expected)
    {
        var places = stand.Places();
        var count = 0;
        for (var one = 0; one < places.Count; one++)
        {
            for (var two = one + 1; two < places.Count; two++)
            {
                for (var three = two + 1; three < places.Count; three++)
                {
                    var widest = Math.Max(AngleAt(places[one], places[two], places[three]), Math.Max(AngleAt(places[two], places[one], places[three]), AngleAt(places[three], places[one], places[two])));
                    count += widest >= 179 ? 1 : 0;
                }
            }
        }

        Assert.Equal(observed, count);
        var outline = ContainerOutline.Of(Plates.SubjectOf(stand.Text()).State.Planting.Container!);
        Assert.Equal(expected, ChanceLines.WithinAngle(places.Count, new Angle(1), outline), 0.05);

        // The counts are nearly Poisson (the same values), so that three roots are a wide berth.
        Assert.InRange(count, expected - (3 * Math.Sqrt(expected)), expected + (3 * Math.Sqrt(expected)));

        static double AngleAt((double X, double Y) at, (double X, double Y) from, (double X, double Y) to)
        {
            double ux = from.X - at.X, uy = from.Y - at.Y, vx = to.X - at.X, vy = to.Y - at.Y;
            return Math.Atan2(Math.Abs((ux * vy) - (uy * vx)), (ux * vx) + (uy * vy)) * 180 / Math.PI;
        }
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
