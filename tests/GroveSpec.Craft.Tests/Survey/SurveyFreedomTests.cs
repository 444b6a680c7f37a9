using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Survey;

/// <summary>What readings leave free.</summary>
public sealed class SurveyFreedomTests
{
    [Fact]
    public void Marks_nearly_on_one_line_leave_two_places_although_there_are_three()
    {
        var trunk = new SurveyedLayout([(-100, 0), (0, 0.01), (100, 0), (30, 80)], 3).Read(3, 0).Read(3, 1).Read(3, 2).Survey().Trunks[3];
        Assert.Equal(SurveyedPlaceKind.OneOfTwo, trunk.Kind);
    }

    [Fact]
    public void A_reading_left_out_is_held_against_both_places_that_the_others_leave()
    {
        // From (30, 80) and from (30, -80) to (0, -300): the roots of 900 + 380² and of 900 + 220². The fifth hangs on the fourth alone.
        var layout = new SurveyedLayout([(-100, 0), (100, 0), (0, -300), (30, 80), (60, 80)], 3).Read(3, 0).Read(3, 1).Read(3, 2, -343.068).Read(4, 3);
        var survey = layout.Survey();
        Assert.Equal([SurveyedReadingKind.Fits, SurveyedReadingKind.Fits, SurveyedReadingKind.LeftOut, SurveyedReadingKind.Fits], survey.Readings.Select(reading => reading.Kind));
        Assert.Equal([Math.Sqrt(900 + (220 * 220)), Math.Sqrt(900 + (380 * 380))], Told(survey.Readings[2].Fitted, survey.Readings[2].OtherFitted), (one, other) => Math.Abs(one - other) < 0.01);
        Assert.All([0, 1, 3], reading => Assert.Null(survey.Readings[reading].OtherFitted));
        var agreement = Assert.Single(TapeAgreement.Of(layout.State(), cancellation: TestContext.Current.CancellationToken).LeftOut);
        Assert.Equal(Told(survey.Readings[2].Fitted, survey.Readings[2].OtherFitted), Told(agreement.Fitted, agreement.OtherFitted));

        static IEnumerable<double> Told(Length? fitted, Length? other) => new[] { fitted!.Value.Millimetres, other!.Value.Millimetres }.Order();
    }

    [Fact]
    public void Where_all_else_leaves_one_place_a_reading_left_out_is_held_against_that_alone() =>
        Assert.All(
            new SurveyedLayout([(-100, 0), (100, 0), (0, -300), (20, 150), (30, 80)], 4).Read(4, 0).Read(4, 1).Read(4, 2, 200).Read(4, 3).Survey().Readings,
            (reading, index) => Assert.Equal((index == 2, true), (reading.Kind == SurveyedReadingKind.LeftOut, reading.OtherFitted is null)));

    [Fact]
    public void A_place_that_is_held_too_loosely_is_told_and_not_to_be_written()
    {
        // With the first reading left out, two are left to trunks on the line through it.
        (double X, double Y)[] places = [(76.8, -72), (13.6, -0.3), (32.6, 49.5), (0, 0)];
        var layout = new SurveyedLayout(places, 3);
        foreach (var (trunk, read) in (ReadOnlySpan<(int, double)>)[(0, 19), (1, 120.5), (2, 67.2)])
        {
            layout.Read(3, trunk, read - Math.Sqrt((places[trunk].X * places[trunk].X) + (places[trunk].Y * places[trunk].Y)));
        }

        var loose = layout.Survey().Trunks[3];
        Assert.Equal((SurveyedPlaceKind.Found, true, false), (loose.Kind, loose.IsLoose, loose.CanBeWritten));
        Assert.True(loose.Ellipse!.Value.HalfLong > Length.FromMillimetres(10));
        var firm = new SurveyedLayout([(-80, -40), (90, -30), (10, 80), (20, 10)], 3).Read(3, 0).Read(3, 1).Read(3, 2).Survey().Trunks[3];
        Assert.Equal((SurveyedPlaceKind.Found, false, true), (firm.Kind, firm.IsLoose, firm.CanBeWritten));
    }

    [Fact]
    public void Without_a_known_place_axes_are_chosen_and_that_is_said()
    {
        var survey = new SurveyedLayout([(40, 60), (140, 60), (90, 10), (20, -40), (130, -50)], 0).ReadAllPairs().Survey();
        Assert.Equal(SurveyFreedomKind.Axes, Assert.Single(survey.Freedoms).Kind);
        Assert.All(survey.Trunks, trunk => Assert.Equal((SurveyedPlaceKind.InChosenAxes, true), (trunk.Kind, trunk.CanBeWritten)));
        Assert.Equal(PlanPoint.Origin, survey.Trunks[0].Place);
        Assert.Equal(PlanPoint.FromMillimetres(100, 0), survey.Trunks[1].Place);
        Assert.True(survey.Trunks[2].Place!.Value.DistanceTo(PlanPoint.FromMillimetres(50, 50)) < Length.FromMillimetres(0.001));
    }

    [Fact]
    public void About_one_known_place_the_whole_can_turn_and_nothing_is_to_be_written()
    {
        var survey = new SurveyedLayout([(40, 60), (140, 60), (90, 10), (20, -40)], 1).ReadAllPairs().Survey();
        var freedom = Assert.Single(survey.Freedoms);
        Assert.Equal((SurveyFreedomKind.Turn, "T0"), (freedom.Kind, freedom.About));
        Assert.Equal(["T1", "T2", "T3"], freedom.Trunks);
        Assert.DoesNotContain(survey.Trunks, trunk => trunk.CanBeWritten);
        Assert.Equal(PlanPoint.FromMillimetres(140, 60), survey.Trunks[1].Place);
    }

    [Fact]
    public void On_two_known_places_the_whole_can_be_turned_over()
    {
        var survey = new SurveyedLayout([(-80, 0), (90, 10), (20, 70), (-40, 55), (10, 120)], 2).ReadAllPairs().Survey();
        Assert.Equal(SurveyFreedomKind.Mirror, Assert.Single(survey.Freedoms).Kind);
        Assert.Equal(["T2", "T3", "T4"], survey.Freedoms[0].Trunks);
    }

    [Fact]
    public void Trunks_that_hang_together_but_on_nothing_known_are_named()
    {
        var read = new SurveyedLayout([(-80, 0), (90, 10), (20, 70), (200, 55), (230, 120), (260, 60)], 3).Read(3, 4).Read(4, 5).Read(3, 5);
        var survey = read.Survey();
        Assert.Equal(SurveyFreedomKind.Apart, Assert.Single(survey.Freedoms).Kind);
        Assert.Equal(NextReadingReason.Tie, survey.Next!.Reason);
        Assert.Null(survey.Trunks[3].Place);
    }

    [Fact]
    public void Trunks_apart_are_surveyed_for_themselves_in_axes_of_their_own()
    {
        var read = new SurveyedLayout([(-80, 0), (90, 10), (20, 70), (200, 55), (230, 120), (260, 60)], 3).Read(3, 4).Read(4, 5).Read(3, 5);
        var state = read.State();
        var part = TapeSurvey.OfApart(state, TapeSurvey.Of(state).Freedoms[0]);
        Assert.Equal(["T3", "T4", "T5"], part.Trunks.Select(trunk => trunk.Name));
        Assert.All(part.Trunks, trunk => Assert.Equal(SurveyedPlaceKind.InChosenAxes, trunk.Kind));

        // By Pythagoras from the layout: (60, 5).
        Assert.Equal(Math.Sqrt(3625), part.Trunks[0].Place!.Value.DistanceTo(part.Trunks[2].Place!.Value).Millimetres, 0.001);
    }
}
