using GroveSpec.Craft.Survey;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Surveying;

/// <summary>The readings of a survey as lines with their lengths, and the one to take next.</summary>
internal sealed class SurveyLines
{
    private const double TextSize = 12;
    private const double TextHeight = TextSize * (TextMetrics.Ascent + TextMetrics.Descent);

    // A length stands on its line and along it, so that a line across it is not taken for its own; one that runs much the same way
    // stays this far from it, so that nobody has to ask which is meant.
    private const double ClearOfOthers = (TextHeight / 2) + 2;

    private static readonly double SineOfMuchTheSameWay = Math.Sin(30 * Math.PI / 180);

    // Among more lines than these no length could be told from its neighbours.
    private const int MostLengths = 400;
    private const double CostOfDoubt = 8;
    private const double CostOfMistaking = 24;
    private const int StepsBeside = 5;

    private readonly List<ReadingLine> drawn = [];
    private readonly List<(int Label, ReadingLine Line)> asked = [];

    /// <summary>Lays the lines out; a reading to a trunk that is not drawn is left out.</summary>
    /// <param name="layout">The plan.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="plan">Where its trunks are drawn.</param>
    /// <param name="units">The units that are read.</param>
    public SurveyLines(PlanLayout layout, TapeSurvey survey, SurveyedPlan plan, UnitSystem units)
    {
        var trunks = new Dictionary<string, DrawnTrunk>(StringComparer.Ordinal);
        foreach (var trunk in layout.Trunks.Where(trunk => !plan.Others.Contains(trunk.State)))
        {
            trunks.TryAdd(trunk.Name, trunk);
        }

        foreach (var judged in survey.Readings)
        {
            var isOff = judged.Kind is SurveyedReadingKind.LeftOut or SurveyedReadingKind.MayBeOff or SurveyedReadingKind.AgainstPlaces;
            Add(judged.Reading.From, judged.Reading.To, isOff ? ReadingLineKind.Off : ReadingLineKind.Fits, Label(judged, units), judged.Reading.Origin.Id);
        }

        foreach (var to in survey.Next?.To ?? [])
        {
            Add(survey.Next!.From, to, ReadingLineKind.Next, "read next", null);
        }

        ShowsAllOfNext = drawn.Count(line => line.Kind == ReadingLineKind.Next) == (survey.Next?.To.Length ?? 0);

        void Add(string from, string to, ReadingLineKind kind, string text, string? origin)
        {
            if (from != to && trunks.TryGetValue(from, out var one) && trunks.TryGetValue(to, out var other))
            {
                drawn.Add(new ReadingLine(one, other, kind, text, origin));
            }
        }
    }

    /// <summary>Whether every line is drawn of what is to be read next; so it is where nothing is.</summary>
    public bool ShowsAllOfNext { get; }

    /// <summary>Whether a line of some kind is drawn.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>True where one is.</returns>
    public bool Shows(ReadingLineKind kind) => drawn.Exists(line => line.Kind == kind);

    /// <summary>Writes the lines.</summary>
    /// <param name="svg">Where to.</param>
    public void WriteBelow(SvgWriter svg)
    {
        foreach (var line in drawn)
        {
            var (from, to) = (line.At(0, 0), line.At(1, 0));
            svg.Line(line.Kind switch { ReadingLineKind.Off => "gs-reading-off", ReadingLineKind.Next => "gs-reading-next", _ => "gs-reading" }, from.X, from.Y, to.X, to.Y, line.Origin);
        }
    }

    /// <summary>Asks for places for what is written along them.</summary>
    /// <param name="placer">Finds them.</param>
    public void Ask(LabelPlacer placer)
    {
        asked.Clear();
        foreach (var line in drawn)
        {
            var (from, to) = (line.At(0, 0), line.At(1, 0));
            placer.Obstacles.AvoidLine(from.X, from.Y, to.X, to.Y, 6);
        }

        foreach (var line in drawn.Where(line => line.MustBeTold || drawn.Count <= MostLengths))
        {
            var width = TextMetrics.ReservedWidth(line.Text, TextSize, line.Kind == ReadingLineKind.Next ? Face.Italic : Face.Regular) + 4;
            var (sine, cosine) = Math.SinCos(line.TurnDegrees * Math.PI / 180);
            var middle = line.At(0.5, 0);
            asked.Add((placer.Ask(new LabelRequest
            {
                Width = (Math.Abs(cosine) * width) + (Math.Abs(sine) * TextHeight),
                Height = (Math.Abs(sine) * width) + (Math.Abs(cosine) * TextHeight),
                AnchorX = middle.X,
                AnchorY = middle.Y,
                Reach = 20,
                Turn = line.MustBeTold ? 1 : 3,
                IsRequired = line.MustBeTold,
                Candidates = line.MustBeTold ? PlacesBeside(line, width) : PlacesOn(line, width),
            }), line));
        }
    }

    /// <summary>Writes what is written along them, where there was room.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="labels">Where it stands.</param>
    public void WriteLabels(SvgWriter svg, PlanLabels labels)
    {
        foreach (var (label, line) in asked)
        {
            if (labels.PlaceOf(label) is not { } place)
            {
                continue;
            }

            if (place.Candidate < 0)
            {
                var (fromX, fromY) = line.At(0.5, 0);
                svg.Line("gs-leader", fromX, fromY, Math.Clamp(fromX, place.Box.Left + 2, place.Box.Right - 2), Math.Clamp(fromY, place.Box.Top + 2, place.Box.Bottom - 2));
            }

            // The baseline runs below the middle of the box by the half of a numeral's height.
            var (sine, cosine) = Math.SinCos(line.TurnDegrees * Math.PI / 180);
            const double Drop = TextSize * 0.255;
            var cls = line.Kind switch { ReadingLineKind.Off => "gs-misfit", ReadingLineKind.Next => "gs-next", _ => "gs-reading-length" };
            svg.Text(cls, place.Box.CentreX - (sine * Drop), place.Box.CentreY + (cosine * Drop), TextSize, line.Text, TextAnchor.Middle, line.Origin, line.TurnDegrees);
        }
    }

    /// <summary>Where a length can stand on its line: nowhere where a line comes near that runs much the same way.</summary>
    private List<LabelCandidate> PlacesOn(ReadingLine line, double width)
    {
        var places = new List<LabelCandidate>();
        foreach (var share in (ReadOnlySpan<double>)[0.5, 0.44, 0.56, 0.38, 0.62, 0.32, 0.68, 0.26, 0.74, 0.2, 0.8, 0.14, 0.86, 0.08, 0.92])
        {
            var (x, y) = line.At(share, 0);
            if (line.Holds(share, width) && !IsNearOthers(line, x, y, width))
            {
                places.Add(new LabelCandidate(x, y, Math.Abs(share - 0.5) * 12));
            }
        }

        return places;
    }

    /// <summary>Where what must be told can stand upright beside its line, rather where no other line comes near.</summary>
    private List<LabelCandidate> PlacesBeside(ReadingLine line, double width)
    {
        var places = new List<LabelCandidate>();
        foreach (var share in (ReadOnlySpan<double>)[0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8])
        {
            foreach (var side in (ReadOnlySpan<double>)[1, -1])
            {
                for (var step = 0; step < StepsBeside; step++)
                {
                    var (x, y) = line.At(share, side * (line.Clearance(width, TextHeight) + (step * 6)));
                    places.Add(new LabelCandidate(x, y, (Math.Abs(share - 0.5) * 12) + (step * 3) + Doubt(line, x, y, width)));
                }
            }
        }

        return places;
    }

    private bool IsNearOthers(ReadingLine line, double x, double y, double width) =>
        drawn.Exists(other => other != line && line.SineTo(other) <= SineOfMuchTheSameWay && Nearest(line, other, x, y, width) < ClearOfOthers);

    /// <summary>What it costs that a text beside its line stands near others, or nearer to one of its own colour than to its own; one between the same two trunks is no other.</summary>
    private double Doubt(ReadingLine line, double x, double y, double width)
    {
        var own = Nearest(line, line, x, y, width);
        var cost = 0.0;
        foreach (var other in drawn)
        {
            // Of the hundreds of lines of a large network few come near: no part of the text is nearer than its middle by more than half of it.
            if (other.DistanceFrom(x, y) - (width / 2) > Math.Max(own, ClearOfOthers) || other == line || line.JoinsTheSame(other))
            {
                continue;
            }

            var away = Nearest(line, other, x, y, width);
            cost = Math.Max(cost, other.Kind == line.Kind && away < own ? CostOfMistaking : away < ClearOfOthers ? CostOfDoubt : 0);
        }

        return cost;
    }

    /// <summary>How near the middle of what is written comes to a line, in pixels.</summary>
    private static double Nearest(ReadingLine written, ReadingLine line, double x, double y, double width)
    {
        const int Looks = 2;
        var (sine, cosine) = Math.SinCos(written.TurnDegrees * Math.PI / 180);
        return Enumerable.Range(-Looks, (2 * Looks) + 1).Select(look => width / 2 * look / Looks).Min(along => line.DistanceFrom(x + (cosine * along), y + (sine * along)));
    }

    private static string Label(SurveyedReading judged, UnitSystem units)
    {
        var read = Bare(judged.Reading.Distance, units);
        return judged.Kind switch
        {
            SurveyedReadingKind.LeftOut or SurveyedReadingKind.AgainstPlaces when judged is { Misfit: { } misfit, OtherFitted: null } => $"{read}, {Bare(misfit.Magnitude, units)} too {(misfit > Length.Zero ? "long" : "short")}",
            SurveyedReadingKind.LeftOut => $"{read}, left out",
            SurveyedReadingKind.MayBeOff => $"{read}, may be off",
            _ => read,
        };
    }

    private static string Bare(Length length, UnitSystem units) => units == UnitSystem.Inch ? DrawnLength.Plain(length.Inches, 2) : DrawnLength.Plain(length.Millimetres, 1);
}
