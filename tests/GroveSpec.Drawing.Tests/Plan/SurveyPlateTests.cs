using System.Globalization;
using System.Xml.Linq;
using GroveSpec.Checks.Surveying;
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

    [Fact]
    public void The_note_explains_what_is_drawn_and_nothing_else()
    {
        var (read, off, next) = (0, 0, 0);
        for (var seed = 1; seed <= 40; seed++)
        {
            // The last without any reading.
            var state = seed < 40 ? Surveyed(seed) : WithTapes(Surveyed(1), [], []);
            var reader = new PlateReader(SurveyPlate.Draw(state, TapeSurvey.Of(state), DrawingOptions.Default with { TellsFindings = false }));
            var note = string.Join(' ', reader.Labels.Where(label => label.Class == "gs-remark").Select(label => label.Text));
            Assert.Equal(reader.Of("gs-reading").Any() || reader.Of("gs-reading-off").Any(), note.Contains("Lines are readings", StringComparison.Ordinal));
            Assert.Equal(reader.Of("gs-reading-off").Any(), note.Contains("in dots and dashes", StringComparison.Ordinal));
            Assert.Equal(reader.Of("gs-reading-next").Any(), note.Contains("A dashed line is to be read next", StringComparison.Ordinal));
            Assert.Equal(reader.Of("gs-control").Any(), note.Contains("A triangle", StringComparison.Ordinal));
            Assert.Equal(reader.Of("gs-ellipse").Any(), note.Contains("within its ellipse", StringComparison.Ordinal));
            Assert.Equal(reader.Of("gs-either").Any(), note.Contains("the other place where it may stand", StringComparison.Ordinal));
            Assert.Equal(reader.Of("gs-apart").Any(), note.Contains("stands in a frame", StringComparison.Ordinal));
            read += reader.Of("gs-reading").Any() ? 1 : 0;
            off += reader.Of("gs-reading-off").Any() ? 1 : 0;
            next += reader.Of("gs-reading-next").Any() ? 1 : 0;
        }

        Assert.True(read is > 5 and < 40 && off is > 3 and < 37 && next is > 3 and < 37, $"{read} with readings, {off} with misfits, {next} with a next one");
    }

    [Fact]
    public void What_to_read_next_is_told_in_words_where_a_line_cannot_show_it()
    {
        var all = Plantings.Scattered(6, 5, hasFindings: false).State;
        string[] names = [.. all.Trunks.Select(trunk => trunk.Name)];
        var state = WithTapes(all, names[..4], [(names[4], names[0], Distance(all, 4, 0))]);
        var survey = TapeSurvey.Of(state);
        Assert.NotNull(survey.Next);
        var told = SurveyWords.Next(survey.Next, UnitSystem.Metric);
        var unplaced = TapeSurvey.Of(state).Trunks.Where(trunk => trunk.Place is null).Select(trunk => trunk.Name).ToList();
        Assert.Contains(survey.Next.To.Append(survey.Next.From), unplaced.Contains);
        Assert.Contains(told, Written(state, tells: false), StringComparison.Ordinal);
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(Written(state, tells: true), System.Text.RegularExpressions.Regex.Escape(told)));

        // All from all: every place is found, and a line shows what is to be read next.
        var found = WithTapes(all, names[..3], [.. Enumerable.Range(3, 3).SelectMany(one => Enumerable.Range(0, 2).Select(other => (names[one], names[other], Distance(all, one, other))))]);
        Assert.NotNull(TapeSurvey.Of(found).Next);
        Assert.Contains("A dashed line is to be read next", Written(found, tells: false), StringComparison.Ordinal);
        Assert.DoesNotContain("Next, read", Written(found, tells: false), StringComparison.Ordinal);

        static string Written(PlantingState state, bool tells) => string.Join(' ', new PlateReader(SurveyPlate.Draw(state, TapeSurvey.Of(state), DrawingOptions.Default with { TellsFindings = tells })).Labels.Select(label => label.Text));
    }

    [Fact]
    public void A_length_stands_on_its_own_line_and_along_it_and_no_line_comes_near_that_runs_that_way()
    {
        var written = 0;
        for (var seed = 1; seed <= 20; seed++)
        {
            var all = Plantings.Scattered(seed == 1 ? 40 : 6 + seed, seed, hasFindings: false).State;
            string[] names = [.. all.Trunks.Select(trunk => trunk.Name)];

            // Each to the three that stand nearest before it in the file, and to the first: some 120 readings in the first planting.
            var state = WithTapes(all, names[..3], [.. Enumerable.Range(3, names.Length - 3).SelectMany(one => Enumerable.Range(0, one).OrderBy(other => Distance(all, one, other)).Take(3).Append(0).Distinct().Select(other => (names[one], names[other], Distance(all, one, other))))]);
            var reader = new PlateReader(SurveyPlate.Draw(state, TapeSurvey.Of(state), DrawingOptions.Default));
            var lines = reader.Of("gs-reading").Concat(reader.Of("gs-reading-next")).Select(line => (Id: line.Attribute("data-origin")?.Value, Run: Assert.Single(PlateReader.Pieces(line.Attribute("d")!.Value)))).ToArray();
            Assert.True(seed > 1 || lines.Length > 100, $"{lines.Length} lines");
            foreach (var length in reader.Of("gs-reading-length"))
            {
                var (x, y, along) = Middle(length);
                var own = Assert.Single(lines, line => line.Id == length.Attribute("data-origin")!.Value);
                var slope = Math.Atan2(own.Run.ToY - own.Run.FromY, own.Run.ToX - own.Run.FromX);
                Assert.True(Math.Abs(Math.Sin(slope - along)) < 0.01, $"seed {seed}: {length.Value} is not along its line");
                Assert.True(Away(own.Run, x, y) < 0.5, $"seed {seed}: {length.Value} is {Away(own.Run, x, y)} px from its line");
                var alike = lines.Where(line => line != own && Math.Abs(Math.Sin(Math.Atan2(line.Run.ToY - line.Run.FromY, line.Run.ToX - line.Run.FromX) - along)) < 0.49);
                Assert.All(alike, line => Assert.True(Away(line.Run, x, y) > 8, $"seed {seed}: {length.Value} could belong to another line"));
                written++;
            }
        }

        Assert.True(written > 150, $"{written} lengths");

        static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

        static (double X, double Y, double Turn) Middle(XElement text)
        {
            var turn = text.Attribute("transform")?.Value.Split(' ', '(', ')');
            var (x, y, along) = turn is null ? (Number(text, "x"), Number(text, "y"), 0) : (double.Parse(turn[1], CultureInfo.InvariantCulture), double.Parse(turn[2], CultureInfo.InvariantCulture), double.Parse(turn[5], CultureInfo.InvariantCulture) * Math.PI / 180);

            // From the baseline up by half a numeral.
            return (x + (Math.Sin(along) * 3), y - (Math.Cos(along) * 3), along);
        }
    }

    [Fact]
    public void What_is_said_of_a_reading_that_is_off_stands_nearer_to_its_own_line_than_to_any_other_that_is_off()
    {
        var (told, mistakable) = (0, new List<string>());
        for (var seed = 1; seed <= 120; seed++)
        {
            var state = Surveyed(seed);
            var reader = new PlateReader(SurveyPlate.Draw(state, TapeSurvey.Of(state), DrawingOptions.Default));
            var lines = reader.Of("gs-reading-off").Select(line => (Id: line.Attribute("data-origin")!.Value, Run: Assert.Single(PlateReader.Pieces(line.Attribute("d")!.Value)))).ToArray();
            foreach (var (misfit, label) in reader.Of("gs-misfit").Zip(reader.Labels.Where(label => label.Class == "gs-misfit")))
            {
                var own = Assert.Single(lines, line => line.Id == misfit.Attribute("data-origin")!.Value);
                told++;
                if (lines.Any(line => line.Id != own.Id && Nearest(line.Run, label.Box) < Nearest(own.Run, label.Box)))
                {
                    mistakable.Add($"{seed}: {misfit.Value}");
                }
            }
        }

        // Where lines are so many that there is room nowhere, a thin line leads from the words to theirs.
        Assert.True(told > 30 && mistakable.Count <= told / 20, $"{mistakable.Count} of {told}: {string.Join(", ", mistakable)}");

        static double Nearest((double FromX, double FromY, double ToX, double ToY) line, GroveSpec.Drawing.Scene.Box box) =>
            Enumerable.Range(0, 5).Min(look => Away(line, box.Left + ((box.Right - box.Left) * look / 4), box.CentreY));
    }

    [Fact]
    public void No_ellipse_runs_through_a_name()
    {
        var (names, crossed) = (0, new List<string>());
        for (var seed = 1; seed <= 60; seed++)
        {
            var state = Surveyed(seed);
            var reader = new PlateReader(SurveyPlate.Draw(state, TapeSurvey.Of(state), DrawingOptions.Default));
            var pieces = reader.Of("gs-ellipse").SelectMany(ellipse => PlateReader.Pieces(ellipse.Attribute("d")!.Value)).ToArray();
            foreach (var name in reader.Labels.Where(label => label.Class == "gs-name"))
            {
                names++;
                if (pieces.Any(piece => name.Box.Grown(-2).LengthInside(piece.FromX, piece.FromY, piece.ToX, piece.ToY) > 0))
                {
                    crossed.Add($"{seed}: {name.Text}");
                }
            }
        }

        Assert.True(names > 300 && crossed.Count == 0, $"{crossed.Count} of {names}: {string.Join(", ", crossed)}");
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

    private static double Away((double FromX, double FromY, double ToX, double ToY) line, double x, double y)
    {
        var (fromX, fromY, toX, toY) = line;
        var (runX, runY) = (toX - fromX, toY - fromY);
        var share = Math.Clamp((((x - fromX) * runX) + ((y - fromY) * runY)) / ((runX * runX) + (runY * runY)), 0, 1);
        return Math.Sqrt(Math.Pow(x - fromX - (share * runX), 2) + Math.Pow(y - fromY - (share * runY), 2));
    }
}
