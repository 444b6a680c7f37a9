using GroveSpec.Craft.Stand;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Survey;

/// <summary>Which reading is to be taken next, and what it would tell.</summary>
public sealed class NextReadingTests
{
    [Fact]
    public void Of_two_that_may_stand_on_either_side_what_lies_between_them_is_read_next_and_not_what_was_read()
    {
        // From (20, 90) to (9, 143) it is √(11² + 53²) = 54.1 mm, and to its mirror image (9, −143) √(11² + 233²) = 233.3 mm.
        var survey = new SurveyedLayout([(-100, 0), (100, 0), (20, 90), (9, 143)], 2).Read(0, 2).Read(1, 2).Read(0, 3).Read(1, 3).Survey();
        Assert.Equal((NextReadingReason.TellSameSide, "T2", "T3"), (survey.Next!.Reason, survey.Next.From, Assert.Single(survey.Next.To)));
        Assert.Equal(Math.Sqrt((11 * 11) + (233 * 233)) - Math.Sqrt((11 * 11) + (53 * 53)), survey.Next.Before!.Value.Millimetres, 0.01);

        // Once it is read they turn over together, and no reading among these four tells the side.
        Assert.NotEqual(NextReadingReason.TellSameSide, new SurveyedLayout([(-100, 0), (100, 0), (20, 90), (9, 143)], 2).Read(0, 2).Read(1, 2).Read(0, 3).Read(1, 3).Read(2, 3).Survey().Next?.Reason);
    }

    [Fact]
    public void Places_held_by_just_enough_readings_are_checked_by_one_that_was_not_read_before()
    {
        // T2 and T3 with two readings each: four for four coordinates. Nothing was read between T1 and T3.
        var survey = new SurveyedLayout([(16, 124), (-56, 98), (-145, -56), (124, -97)], 2).Read(0, 2).Read(1, 2).Read(0, 3).Read(2, 3).Survey();
        Assert.Equal(0, survey.SpareReadings);
        Assert.Equal((NextReadingReason.Check, "T1", "T3"), (survey.Next!.Reason, survey.Next.From, Assert.Single(survey.Next.To)));
    }

    [Fact]
    public void Two_readings_leave_two_places_and_the_next_reading_tells_them_apart()
    {
        var read = new SurveyedLayout([(-100, 0), (100, 0), (0, 150), (30, 80)], 3).Read(3, 0).Read(3, 1);
        var survey = read.Survey();
        var trunk = survey.Trunks[3];
        Assert.Equal(SurveyedPlaceKind.OneOfTwo, trunk.Kind);
        Assert.False(trunk.CanBeWritten);
        PlanPoint[] both = [PlanPoint.FromMillimetres(30, 80), PlanPoint.FromMillimetres(30, -80)];
        Assert.All(new[] { trunk.Place!.Value, trunk.OtherPlace!.Value }, place => Assert.Contains(both, true1 => true1.DistanceTo(place) < Length.FromMillimetres(0.01)));
        Assert.Equal(SurveyFreedomKind.Mirror, Assert.Single(survey.Freedoms).Kind);
        Assert.Equal(NextReadingReason.TellSides, survey.Next!.Reason);
        Assert.Equal(("T3", "T2"), (survey.Next.From, survey.Next.To[0]));
        Assert.Equal(SurveyedPlaceKind.Found, read.Read(3, 2).Survey().Trunks[3].Kind);
    }

    [Fact]
    public void One_reading_leaves_a_trunk_free_and_the_next_reading_holds_it()
    {
        var survey = new SurveyedLayout([(-100, 0), (100, 0), (0, 150), (30, 80)], 3).Read(3, 0).Survey();
        Assert.Equal((SurveyedPlaceKind.Free, null), (survey.Trunks[3].Kind, survey.Trunks[3].Place));
        Assert.Equal(SurveyFreedomKind.Motion, Assert.Single(survey.Freedoms).Kind);
        Assert.Equal((NextReadingReason.Hold, "T3"), (survey.Next!.Reason, survey.Next.From));
    }

    [Fact]
    public void A_trunk_without_a_reading_is_named_with_three_trunks_to_read_it_to()
    {
        var survey = new SurveyedLayout([(-100, 0), (100, 0), (0, 150), (30, 80)], 3).Survey();
        Assert.Equal((SurveyFreedomKind.Unread, "T3"), (survey.Freedoms[0].Kind, survey.Freedoms[0].Trunks[0]));
        Assert.Equal(NextReadingReason.Tie, survey.Next!.Reason);
        Assert.Equal(["T0", "T1", "T2"], survey.Next.To);
    }

    [Fact]
    public void Where_all_was_read_and_nothing_is_to_spare_one_is_read_again_as_a_check()
    {
        var survey = new SurveyedLayout([(0, 0), (100, 0), (0, 150)], 0).ReadAllPairs().Survey();
        Assert.Equal(0, survey.SpareReadings);
        Assert.Equal(NextReadingReason.Check, survey.Next!.Reason);
    }

    [Fact]
    public void With_a_reading_to_spare_no_check_is_asked_for()
    {
        // Three readings for two coordinates.
        var survey = new SurveyedLayout([(-150, -60), (140, -80), (10, 160), (-30, 20)], 3).Read(3, 0).Read(3, 1).Read(3, 2).Survey();
        Assert.Equal(1, survey.SpareReadings);
        Assert.True(survey.IsDeviationAssumed);
        Assert.NotEqual(NextReadingReason.Check, survey.Next?.Reason);
    }

    [Fact]
    public void The_next_reading_narrows_as_it_says()
    {
        var random = new SeededRandom(31);
        var asked = 0;
        for (var trial = 0; trial < 100; trial++)
        {
            var read = SurveyedLayout.Scattered(random, 5, 3).Read(3, 0).Read(3, 1).Read(3, 2).Read(4, 0).Read(4, 1).Read(4, 2);
            var before = read.Survey();
            if (before.Next is not { Reason: NextReadingReason.Narrow } next)
            {
                continue;
            }

            // Exact readings keep the places and the assumed deviation while fewer than three are spare.
            Assert.Equal(2, before.SpareReadings);
            asked++;
            Assert.Equal(before.Trunks.Max(trunk => trunk.Ellipse?.HalfLong ?? Length.Zero).Millimetres, next.Before!.Value.Millimetres, 1e-3);
            Assert.True(next.After < next.Before);
        }

        Assert.True(asked > 20, $"{asked}");
    }
}
