using GroveSpec.Craft.Stand;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using Xunit;

namespace GroveSpec.Craft.Tests.Survey;

/// <summary>Readings between bark that are written as between centres, and the reverse.</summary>
public sealed class ReadOtherwiseTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Readings_that_are_all_written_the_wrong_way_are_told_as_that_and_no_place_is_written(bool areGaps)
    {
        var random = new SeededRandom(2611);
        var told = 0;
        for (var trial = 0; trial < 100; trial++)
        {
            var layout = SurveyedLayout.Scattered(random, 6 + random.NextBelow(3), trial % 3 == 0 ? 0 : 3).ReadAllPairs(() => 0.5 * random.NextNormal());
            var state = WithThickness(layout, random, areGaps, isWrittenSo: !areGaps);
            var survey = TapeSurvey.Search(state, false, TestContext.Current.CancellationToken);
            if (survey.FitsOtherwise is { } otherwise)
            {
                told++;
                Assert.Equal(areGaps, otherwise.IsBetweenBark);
                Assert.True(otherwise.Worst < Length.FromMillimetres(2.5));
                Assert.DoesNotContain(survey.Trunks, trunk => trunk.CanBeWritten);
            }
        }

        Assert.InRange(told, 97, 100);
    }

    [Fact]
    public void It_is_not_told_of_readings_that_are_written_as_they_were_read_with_one_mistake_or_without()
    {
        var random = new SeededRandom(2612);
        for (var trial = 0; trial < 200; trial++)
        {
            var layout = SurveyedLayout.Scattered(random, 6 + random.NextBelow(3), trial % 3 == 0 ? 0 : 3).ReadAllPairs(() => 0.5 * random.NextNormal());
            if (trial % 2 == 0)
            {
                layout.Tapes[0] = layout.Tapes[0] with { Distance = layout.Tapes[0].Distance + Length.FromMillimetres(20) };
            }

            var areGaps = trial % 4 < 2;
            Assert.Null(TapeSurvey.Search(WithThickness(layout, random, areGaps, areGaps), false, TestContext.Current.CancellationToken).FitsOtherwise);
        }
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    public void With_fewer_than_two_readings_to_spare_it_may_be_chance(int spare, bool isTold)
    {
        var layout = new SurveyedLayout([(-150, -60), (140, -80), (10, 160), (-120, 110), (20, 10)], 4);
        for (var mark = 0; mark < 2 + spare; mark++)
        {
            layout.Read(4, mark);
        }

        Assert.Equal(isTold, TapeSurvey.Of(WithThickness(layout, new SeededRandom(1), areGaps: true, isWrittenSo: false)).FitsOtherwise is not null);
    }

    [Fact]
    public void Readings_between_places_that_the_file_names_count_as_well()
    {
        var layout = new SurveyedLayout([(-150, -60), (140, -80), (10, 160)], 3).Read(0, 1).Read(1, 2);
        Assert.NotNull(TapeSurvey.Of(WithThickness(layout, new SeededRandom(1), areGaps: true, isWrittenSo: false)).FitsOtherwise);
    }

    [Fact]
    public void Where_some_are_written_one_way_and_some_the_other_it_is_not_told()
    {
        var random = new SeededRandom(2613);
        var state = WithThickness(SurveyedLayout.Scattered(random, 7, 3).ReadAllPairs(), random, areGaps: true, isWrittenSo: false);
        var tapes = state.Planting.Tapes;
        Assert.NotNull(TapeSurvey.Of(state).FitsOtherwise);
        Assert.Null(TapeSurvey.Of(state with { Planting = state.Planting with { Tapes = tapes.SetItem(0, tapes[0] with { IsBetweenBark = true }) } }).FitsOtherwise);
    }

    /// <summary>The layout with trunks of 10 to 16 mm, so that none touch.</summary>
    private static PlantingState WithThickness(SurveyedLayout layout, SeededRandom random, bool areGaps, bool isWrittenSo)
    {
        var state = layout.State();
        var planting = state.Planting with { Trunks = [.. state.Planting.Trunks.Select(trunk => trunk with { Diameter = new(Length.FromMillimetres(10 + (6 * random.NextShare())), trunk.Origin) })] };
        var radii = planting.Trunks.ToDictionary(trunk => trunk.Name, trunk => trunk.Diameter!.Value.Value.Millimetres / 2, StringComparer.Ordinal);
        return (planting with
        {
            Tapes =
            [
                .. planting.Tapes.Select(tape => tape with
                {
                    Distance = areGaps ? tape.Distance - Length.FromMillimetres(radii[tape.From] + radii[tape.To]) : tape.Distance,
                    IsBetweenBark = isWrittenSo,
                }),
            ],
        }).StateOn(null);
    }
}
