using GroveSpec.Craft.Survey;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Surveying;

/// <summary>The readings of a survey as lines with their lengths, and the one to take next.</summary>
internal sealed class SurveyLines
{
    private const double TextSize = 12;
    private const double NextBeside = 5;

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
            Add(judged.Reading.From, judged.Reading.To, isOff ? LineKind.Off : LineKind.Fits, Label(judged, units), judged.Reading.Origin.Id);
        }

        foreach (var to in survey.Next?.To ?? [])
        {
            Add(survey.Next!.From, to, LineKind.Next, "read next", null);
        }

        void Add(string from, string to, LineKind kind, string text, string? origin)
        {
            if (from != to && trunks.TryGetValue(from, out var one) && trunks.TryGetValue(to, out var other))
            {
                drawn.Add(new ReadingLine(one, other, kind, text, origin));
            }
        }
    }

    private enum LineKind
    {
        Fits,
        Off,
        Next,
    }

    /// <summary>Writes the lines.</summary>
    /// <param name="svg">Where to.</param>
    public void WriteBelow(SvgWriter svg)
    {
        foreach (var line in drawn)
        {
            var (from, to) = (line.At(0, 0), line.At(1, 0));
            svg.Line(line.Kind switch { LineKind.Off => "gs-reading-off", LineKind.Next => "gs-reading-next", _ => "gs-reading" }, from.X, from.Y, to.X, to.Y, line.Origin);
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
            var width = TextMetrics.ReservedWidth(line.Text, TextSize, line.Kind == LineKind.Next ? Face.Italic : Face.Regular) + 4;
            const double Height = TextSize * (TextMetrics.Ascent + TextMetrics.Descent);
            var middle = line.At(0.5, 0);
            asked.Add((placer.Ask(new LabelRequest
            {
                Width = width,
                Height = Height,
                AnchorX = middle.X,
                AnchorY = middle.Y,
                Reach = 20,
                Turn = line.Kind == LineKind.Fits ? 3 : 1,
                IsRequired = line.Kind != LineKind.Fits,
                Candidates = line.Places(width, Height),
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
            if (labels.PlaceOf(label) is { } place)
            {
                var cls = line.Kind switch { LineKind.Off => "gs-misfit", LineKind.Next => "gs-next", _ => "gs-reading-length" };
                svg.Text(cls, place.Box.CentreX, place.Box.CentreY + (TextSize * 0.255), TextSize, line.Text, TextAnchor.Middle, line.Origin);
            }
        }
    }

    private static string Label(SurveyedReading judged, UnitSystem units)
    {
        var read = Bare(judged.Reading.Distance, units);
        return judged.Kind switch
        {
            SurveyedReadingKind.LeftOut or SurveyedReadingKind.AgainstPlaces when judged.Misfit is { } misfit => $"{read}, {Bare(misfit < Length.Zero ? -misfit : misfit, units)} too {(misfit > Length.Zero ? "long" : "short")}",
            SurveyedReadingKind.LeftOut => $"{read}, left out",
            SurveyedReadingKind.MayBeOff => $"{read}, may be off",
            _ => read,
        };
    }

    private static string Bare(Length length, UnitSystem units) => units == UnitSystem.Inch ? DrawnLength.Plain(length.Inches, 2) : DrawnLength.Plain(length.Millimetres, 1);

    private sealed class ReadingLine(DrawnTrunk one, DrawnTrunk other, LineKind kind, string text, string? origin)
    {
        public LineKind Kind => kind;

        public string Text => text;

        public string? Origin => origin;

        /// <summary>A place along the line, from the edge of one trunk to that of the other.</summary>
        public (double X, double Y) At(double share, double beside)
        {
            var (x, y) = (other.X - one.X, other.Y - one.Y);
            var length = Math.Max(1e-9, Math.Sqrt((x * x) + (y * y)));
            var (first, last) = (Math.Min(0.4, one.FlareRadius / length), 1 - Math.Min(0.4, other.FlareRadius / length));
            var along = first + ((last - first) * share);

            // What is read again runs beside its first reading.
            var off = beside + (kind == LineKind.Next ? NextBeside : 0);
            return (one.X + (x * along) + (y / length * off), one.Y + (y * along) - (x / length * off));
        }

        public List<LabelCandidate> Places(double width, double height)
        {
            var (x, y) = (other.X - one.X, other.Y - one.Y);
            var length = Math.Max(1e-9, Math.Sqrt((x * x) + (y * y)));
            var clear = (Math.Abs(y) / length * width / 2) + (Math.Abs(x) / length * height / 2) + 1;
            var places = new List<LabelCandidate>();
            foreach (var share in (ReadOnlySpan<double>)[0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8])
            {
                foreach (var side in (ReadOnlySpan<double>)[1, -1])
                {
                    for (var step = 0; step < 2; step++)
                    {
                        var place = At(share, side * (clear + (step * 6)));
                        places.Add(new LabelCandidate(place.X, place.Y, (Math.Abs(share - 0.5) * 12) + (step * 3)));
                    }
                }
            }

            return places;
        }
    }
}
