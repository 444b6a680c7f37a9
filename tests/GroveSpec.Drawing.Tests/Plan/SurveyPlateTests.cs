using GroveSpec.Craft.Survey;
using GroveSpec.Drawing.Tests.Front;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.States;
using Xunit;

namespace GroveSpec.Drawing.Tests.Plan;

public sealed class SurveyPlateTests
{
    [Fact]
    public void No_two_labels_overlap_and_every_place_has_its_ellipse_or_its_triangle()
    {
        var (ellipses, misfits, others, apart) = (0, 0, 0, 0);
        for (var seed = 1; seed <= 60; seed++)
        {
            var state = Surveyed(seed);
            var survey = TapeSurvey.Of(state);
            var svg = SurveyPlate.Draw(state, survey, DrawingOptions.Default);
            var reader = new PlateReader(svg);
            var labels = reader.Labels.ToArray();
            for (var i = 0; i < labels.Length; i++)
            {
                Assert.True(reader.Page.Grown(0.1).Holds(labels[i].Box), $"seed {seed}: {labels[i].Text} leaves the page");
                for (var j = 0; j < i; j++)
                {
                    Assert.False(labels[i].Box.Grown(-0.1).Overlaps(labels[j].Box), $"seed {seed}: {labels[i].Text} and {labels[j].Text} overlap");
                }
            }

            Assert.Equal(survey.Trunks.Count(trunk => trunk.Kind == SurveyedPlaceKind.Known), reader.Of("gs-control").Count());
            Assert.True(reader.Of("gs-ellipse").Count() >= survey.Trunks.Count(trunk => trunk.Ellipse is { } ellipse && ellipse.HalfLong > Length.Zero), $"seed {seed}");
            var off = survey.Readings.Count(judged => judged.Kind is SurveyedReadingKind.LeftOut or SurveyedReadingKind.MayBeOff or SurveyedReadingKind.AgainstPlaces);
            Assert.True(reader.Of("gs-misfit").Count() <= off && reader.Of("gs-misfit").Count() == reader.Of("gs-reading-off").Count(), $"seed {seed}");
            Assert.Equal(svg, SurveyPlate.Draw(state, survey, DrawingOptions.Default));
            ellipses += reader.Of("gs-ellipse").Count();
            misfits += reader.Of("gs-misfit").Count();
            others += reader.Of("gs-either").Count();
            apart += reader.Of("gs-apart").Count();
        }

        Assert.True(ellipses > 60 && misfits > 5 && others > 3 && apart > 3, $"{ellipses} ellipses, {misfits} misfits, {others} second places, {apart} parts beside");
    }

    [Fact]
    public void An_ellipse_too_small_to_be_seen_is_drawn_larger_by_a_factor_that_is_told()
    {
        var state = Exact(Plantings.Scattered(7, 3, hasFindings: false).State, 4);
        var survey = TapeSurvey.Of(state);
        var reader = new PlateReader(SurveyPlate.Draw(state, survey, DrawingOptions.Default));
        Assert.Matches("ellipses are drawn [0-9]+ times as large as they are", string.Join(' ', reader.Labels.Select(label => label.Text)));
    }

    [Fact]
    public void What_hangs_on_nothing_known_stands_to_the_right_of_the_container_in_a_frame()
    {
        var all = Plantings.Scattered(8, 5, hasFindings: false).State;
        string[] names = [.. all.Trunks.Select(trunk => trunk.Name)];
        var state = WithTapes(all, names[..4], [(names[5], names[6], 80), (names[6], names[7], 90), (names[5], names[7], 60)]);
        var svg = SurveyPlate.Draw(state, TapeSurvey.Of(state), DrawingOptions.Default);
        var frame = Assert.Single(new PlateReader(svg).Of("gs-apart"));
        Assert.True(double.Parse(frame.Attribute("x")!.Value, System.Globalization.CultureInfo.InvariantCulture) > 500);
    }

    [Fact]
    public void Without_a_container_the_ground_is_that_of_the_planting_and_not_of_what_stands_beside()
    {
        var all = Plantings.Scattered(8, 5, hasFindings: false).State;
        string[] names = [.. all.Trunks.Select(trunk => trunk.Name)];
        var open = all with { Planting = all.Planting with { Container = null } };
        var state = WithTapes(open, names[..4], [(names[5], names[6], 80), (names[6], names[7], 90), (names[5], names[7], 60)]);
        var reader = new PlateReader(SurveyPlate.Draw(state, TapeSurvey.Of(state), DrawingOptions.Default));
        var frame = double.Parse(Assert.Single(reader.Of("gs-apart")).Attribute("x")!.Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(PlateReader.Pieces(Assert.Single(reader.Of("gs-ground")).Attribute("d")!.Value).Max(piece => piece.ToX) < frame);
    }

    /// <summary>Some trunks keep their places, the others are read to some, now and then with a mistake, and now and then only to each other.</summary>
    private static PlantingState Surveyed(int seed)
    {
        var random = new Random(seed);
        var state = Plantings.Scattered(4 + (seed % 11), seed, 1 + (seed % 9), hasFindings: false).State;
        string[] names = [.. state.Trunks.Select(trunk => trunk.Name)];
        var known = random.Next(5) == 0 ? random.Next(2) : Math.Min(names.Length - 1, 3);
        var tapes = new List<(string From, string To, double Read)>();
        var alone = seed % 3 == 0 && names.Length - known >= 4 ? names.Length - 3 : names.Length;
        for (var one = known; one < names.Length; one++)
        {
            var from = one >= alone ? alone : 0;
            var ends = Enumerable.Range(from, one - from).Where(_ => one >= alone || random.Next(3) > 0);
            tapes.AddRange(ends.Select(other => (names[one], names[other], Distance(state, one, other) + (random.Next(12) == 0 ? 15 : random.NextDouble() - 0.5))));
        }

        return WithTapes(state, names[..known], tapes);
    }

    private static PlantingState Exact(PlantingState state, int known)
    {
        string[] names = [.. state.Trunks.Select(trunk => trunk.Name)];
        return WithTapes(state, names[..known], [.. Enumerable.Range(known, names.Length - known).SelectMany(one => Enumerable.Range(0, known).Select(other => (names[one], names[other], Distance(state, one, other))))]);
    }

    private static double Distance(PlantingState state, int one, int other) => state.Trunks[one].Place!.Value.DistanceTo(state.Trunks[other].Place!.Value).Millimetres;

    private static PlantingState WithTapes(PlantingState state, string[] known, IReadOnlyList<(string From, string To, double Read)> tapes)
    {
        var planting = state.Planting with
        {
            Trunks = [.. state.Planting.Trunks.Select(trunk => known.Contains(trunk.Name) ? trunk : trunk with { At = null })],
            Tapes = [.. tapes.Select((tape, index) => new TapeReading(tape.From, tape.To, Length.FromMillimetres(Math.Max(1, tape.Read)), false, new Origin($"tape:{index}")))],
        };
        return PlantingState.Of(planting, null);
    }
}
