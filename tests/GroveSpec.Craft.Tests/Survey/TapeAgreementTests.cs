using GroveSpec.Craft.Stand;
using GroveSpec.Craft.Survey;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Trunks;
using Xunit;

namespace GroveSpec.Craft.Tests.Survey;

public sealed class TapeAgreementTests
{
    [Fact]
    public void It_names_the_readings_that_the_survey_names()
    {
        var random = new SeededRandom(81);
        var (out1, doubted) = (0, 0);
        for (var trial = 0; trial < 300; trial++)
        {
            var known = 3 * (trial % 2);
            var read = SurveyedLayout.Scattered(random, 4 + random.NextBelow(4), known).ReadAllPairs(() => 0.5 * random.NextNormal());
            var gross = random.NextBelow(read.Tapes.Count);
            read.Tapes[gross] = read.Tapes[gross] with { Distance = read.Tapes[gross].Distance + Length.FromMillimetres(random.NextBelow(40)) };
            var survey = read.Survey();
            var agreement = TapeAgreement.Of(read.State(), cancellation: TestContext.Current.CancellationToken);
            int[] Of(SurveyedReadingKind kind) => [.. Enumerable.Range(0, survey.Readings.Length).Where(index => survey.Readings[index].Kind == kind)];
            Assert.Equal(Of(SurveyedReadingKind.LeftOut), agreement.LeftOut.Select(one => one.Reading));
            Assert.Equal(Of(SurveyedReadingKind.MayBeOff), agreement.InDoubt.SelectMany(row => row.Readings).Select(one => one.Reading).Order());
            Assert.All(agreement.LeftOut, one => Assert.Equal(survey.Readings[one.Reading].Fitted!.Value.Millimetres, one.Fitted.Millimetres, 1e-5));
            (out1, doubted) = (out1 + agreement.LeftOut.Length, doubted + agreement.InDoubt.Length);
        }

        Assert.True(out1 > 50 && doubted > 50, $"{out1}, {doubted}");
    }

    [Fact]
    public void The_one_that_may_be_off_is_told_with_what_it_should_have_read()
    {
        // One reading to spare: without the wrong one the three others meet exactly where they were read.
        var read = new SurveyedLayout([(-150, -60), (140, -80), (10, 160), (-30, 20)], 3).Read(3, 0).Read(3, 1, 20).Read(3, 2);
        var row = Assert.Single(TapeAgreement.Of(read.State(), cancellation: TestContext.Current.CancellationToken).InDoubt);
        Assert.Equal((1, 3), (row.Off, row.Readings.Length));

        // By Pythagoras from (-30, 20) to (140, -80).
        Assert.Equal(Math.Sqrt((170 * 170) + (100 * 100)), Assert.Single(row.Readings, one => one.Reading == 1).Fitted.Millimetres, 0.001);
    }

    [Fact]
    public void Trunks_that_hang_on_nothing_known_are_looked_at_as_well()
    {
        (double X, double Y)[] places = [(-80, 0), (90, 10), (20, 70), (200, 55), (230, 120), (260, 60), (300, 130), (180, 160), (340, 40)];
        var read = new SurveyedLayout(places, 3);
        for (var one = 3; one < 9; one++)
        {
            for (var other = one + 1; other < 9; other++)
            {
                read.Read(one, other, (one, other) == (4, 6) ? 25 : 0);
            }
        }

        var off = Assert.Single(TapeAgreement.Of(read.State(), cancellation: TestContext.Current.CancellationToken).LeftOut);
        Assert.Equal(("T4", "T6"), (read.Tapes[off.Reading].From, read.Tapes[off.Reading].To));
        Assert.Equal(SurveyedLayout.Distance(places[4], places[6]), off.Fitted.Millimetres, 0.001);
    }

    [Fact]
    public void A_reading_between_two_places_is_told_with_what_they_make_it()
    {
        var one = Assert.Single(TapeAgreement.Of(new SurveyedLayout([(0, 0), (30, 40)], 2).Read(0, 1, 1.5).State(), cancellation: TestContext.Current.CancellationToken).BetweenPlaces);
        Assert.Equal((0, Length.FromMillimetres(50)), (one.Reading, one.Fitted));
    }

    [Fact]
    public void Between_bark_both_radii_are_taken_off_again()
    {
        Trunk Thick(string name, double x) => new() { Name = name, Origin = Origin.Default, Diameter = new(Length.FromMillimetres(20), Origin.Default), At = new Stated<PlanPoint>(PlanPoint.FromMillimetres(x, 0), Origin.Default) };
        var planting = new Planting { Trunks = [Thick("A", 0), Thick("B", 100)], Tapes = [new("A", "B", Length.FromMillimetres(90), IsBetweenBark: true, Origin.Default)] };
        Assert.Equal(Length.FromMillimetres(80), Assert.Single(TapeAgreement.Of(planting.StateOn(null), cancellation: TestContext.Current.CancellationToken).BetweenPlaces).Fitted);
    }

    [Fact]
    public void It_is_kept_while_the_same_is_read_among_the_same_places_and_not_longer()
    {
        var random = new SeededRandom(91);
        var read = SurveyedLayout.Scattered(random, 6, 3).ReadAllPairs(() => 0.5 * random.NextNormal());
        var before = TapeAgreement.Of(read.State(), cancellation: TestContext.Current.CancellationToken);
        var state = read.State();
        Assert.Same(before, TapeAgreement.Of(state, before, cancellation: TestContext.Current.CancellationToken));

        // Where a line stands and how tall a trunk is says nothing of a distance.
        var elsewhere = state.Planting with
        {
            Tapes = [.. state.Planting.Tapes.Select((tape, index) => tape with { Origin = new Origin($"tape:other-{index}") })],
            Trunks = [.. state.Planting.Trunks.Select(trunk => trunk with { Height = new(Length.FromMillimetres(200), Origin.Default) })],
        };
        Assert.Same(before, TapeAgreement.Of(elsewhere.StateOn(null), before, cancellation: TestContext.Current.CancellationToken));

        TapeReading first = read.Tapes[0], last = read.Tapes[^1];
        NotKept(state.Planting with { Tapes = state.Planting.Tapes.SetItem(0, first with { Distance = first.Distance + new Length(1) }) });
        NotKept(state.Planting with { Tapes = state.Planting.Tapes.SetItem(0, last).SetItem(state.Planting.Tapes.Length - 1, first) });
        NotKept(state.Planting with { Tapes = state.Planting.Tapes.RemoveAt(2) });
        NotKept(state.Planting with { Trunks = state.Planting.Trunks.SetItem(0, state.Planting.Trunks[0] with { At = new Stated<PlanPoint>(PlanPoint.Origin, Origin.Default) }) });
        NotKept(state.Planting with { Trunks = state.Planting.Trunks.SetItem(5, state.Planting.Trunks[5] with { At = new Stated<PlanPoint>(PlanPoint.Origin, Origin.Default) }) });

        void NotKept(Planting planting) => Assert.NotSame(before, TapeAgreement.Of(planting.StateOn(null), before));
    }

    [Fact]
    public void What_was_kept_says_what_looking_again_says()
    {
        var random = new SeededRandom(92);
        for (var trial = 0; trial < 50; trial++)
        {
            var read = SurveyedLayout.Scattered(random, 6, 3).ReadAllPairs(() => 3 * random.NextNormal());
            var before = TapeAgreement.Of(read.State(), cancellation: TestContext.Current.CancellationToken);
            read.Tapes[trial % read.Tapes.Count] = read.Tapes[trial % read.Tapes.Count] with { Distance = Length.FromMillimetres(50 + trial) };
            Assert.Equal(TapeAgreement.Of(read.State(), cancellation: TestContext.Current.CancellationToken).LeftOut, TapeAgreement.Of(read.State(), before, cancellation: TestContext.Current.CancellationToken).LeftOut);
        }
    }
}
