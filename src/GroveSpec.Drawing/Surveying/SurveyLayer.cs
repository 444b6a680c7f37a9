using GroveSpec.Checks.Surveying;
using GroveSpec.Craft.Survey;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Surveying;

/// <summary>What a plan with a survey carries besides: readings, how sure the places are, and the reading to take next.</summary>
internal sealed class SurveyLayer : PlanLayer
{
    private const double ApartRoom = 76;
    private const double CostOfEllipse = 30;
    private const double ControlReach = 4.5;
    private const double Seen = 14;
    private const double LargestEllipse = 34;
    private static readonly int[] Factors = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    private readonly SurveyedPlan plan;
    private readonly TapeSurvey survey;
    private readonly UnitSystem units;
    private readonly HashSet<string> known;
    private readonly HashSet<string> beside;
    private readonly SurveyLines lines;
    private readonly double scale;
    private readonly bool tells;

    /// <summary>Prepares the layer.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="options">How it is drawn.</param>
    public SurveyLayer(SurveyedPlan plan, TapeSurvey survey, DrawingOptions options)
    {
        (this.plan, this.survey, units) = (plan, survey, options.Units);
        known = [.. survey.Trunks.Where(trunk => trunk.Kind == SurveyedPlaceKind.Known).Select(trunk => trunk.Name)];
        Sentences = [.. new[] { SurveyWords.NothingSought(survey) }.Concat(SurveyWords.Notes(survey, units)).Where(said => said.Length > 0)];
        beside = [.. plan.Apart.SelectMany(part => part).Select(trunk => trunk.Name)];
        var layout = PlanLayout.Of(plan.State, options, this);
        (scale, tells) = (layout.Scale, options.TellsFindings);
        lines = new SurveyLines(layout, survey, plan, units);
    }

    /// <inheritdoc/>
    public override string Title => "places from tape readings";

    /// <inheritdoc/>
    public override string? Mark => null;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Sentences { get; }

    /// <inheritdoc/>
    public override string Remark => $"Places from tape readings: {SurveyWords.Heading(survey)} · from above";

    /// <inheritdoc/>
    public override bool StandsBeside(TrunkState trunk) => beside.Contains(trunk.Name);

    /// <inheritdoc/>
    public override bool ShowsGaps => false;

    /// <inheritdoc/>
    public override string Note
    {
        get
        {
            var said = new List<string>();
            if (known.Count > 0)
            {
                said.Add("A triangle marks a place that the file gives.");
            }

            if (!plan.Ellipses.IsEmpty)
            {
                said.Add($"A place lies within its ellipse in 95 of 100 cases; {(Factor == 1 ? "ellipses are drawn to scale" : $"ellipses are drawn {Factor} times as large as they are")}.");
            }

            if (lines.Shows(ReadingLineKind.Fits) || lines.Shows(ReadingLineKind.Off))
            {
                said.Add($"Lines are readings; on them, where there is room, stands what was read, in {(units == UnitSystem.Inch ? "inches" : "mm")}.");
            }

            if (lines.Shows(ReadingLineKind.Off))
            {
                said.Add("A line in dots and dashes does not fit, or may not.");
            }

            if (lines.Shows(ReadingLineKind.Next))
            {
                said.Add("A dashed line is to be read next.");
            }

            // A line needs two places; what is to be read to a trunk without one would be told nowhere.
            if (!tells && !lines.ShowsAllOfNext)
            {
                said.Add(SurveyWords.Next(survey.Next, units));
            }

            if (!plan.Others.IsEmpty)
            {
                said.Add("A broken ring tied to a trunk by dots is the other place where it may stand.");
            }

            if (!plan.Apart.IsEmpty)
            {
                said.Add("What stands in a frame hangs together but on nothing known, and is drawn beside, in axes of its own.");
            }

            return DrawnText.Clean(string.Join(' ', said));
        }
    }

    /// <inheritdoc/>
    public override string Description
    {
        get
        {
            var places = survey.Trunks.Where(trunk => trunk.Place is not null).Take(60).Select(trunk => $"{DrawnText.Isolated(trunk.Name)} {SurveyWords.Place(trunk, units)}.");
            return DrawnText.Clean($"{Remark.Replace(" ·", ",", StringComparison.Ordinal)}. {string.Join(' ', places)} {string.Join(' ', Sentences)}".TrimEnd());
        }
    }

    private int Factor
    {
        get
        {
            var largest = plan.Ellipses.IsEmpty ? 0 : plan.Ellipses.Max(one => one.Ellipse.HalfLong.Millimetres) * scale;
            return largest is <= 0 or >= Seen ? 1 : Factors.Last(factor => factor == 1 || largest * factor <= LargestEllipse);
        }
    }

    /// <inheritdoc/>
    public override bool Explains(TrunkState trunk) => plan.Others.Contains(trunk);

    /// <inheritdoc/>
    public override double ReachOf(DrawnTrunk trunk) =>
        plan.Ellipses.Where(one => ReferenceEquals(one.Trunk, trunk.State)).Select(one => one.Ellipse.HalfLong.Millimetres * scale * Factor).FirstOrDefault();

    /// <inheritdoc/>
    public override StyleSheet Sheet() => SurveyStyle.Sheet();

    /// <inheritdoc/>
    public override void WriteBelow(SvgWriter svg, PlanLayout layout)
    {
        foreach (var part in plan.Apart)
        {
            var drawn = part.Select(trunk => Box.About(layout.ToX(trunk.Place!.Value.X.Millimetres), layout.ToY(trunk.Place!.Value.Y.Millimetres), ApartRoom, ApartRoom));
            svg.Rectangle("gs-apart", drawn.Aggregate((one, other) => one.With(other)));
        }

        lines.WriteBelow(svg);
    }

    /// <inheritdoc/>
    public override void Ask(LabelPlacer placer, PlanLayout layout)
    {
        foreach (var (trunk, ellipse) in plan.Ellipses)
        {
            var outline = Outline(layout, trunk, ellipse, 16);
            for (var corner = 0; corner < outline.Length; corner++)
            {
                var (from, to) = (outline[corner], outline[(corner + 1) % outline.Length]);
                placer.Obstacles.AvoidLine(from.X, from.Y, to.X, to.Y, CostOfEllipse);
            }
        }

        lines.Ask(placer);
    }

    /// <inheritdoc/>
    public override void WriteAbove(SvgWriter svg, PlanLayout layout, PlanLabels labels)
    {
        foreach (var other in plan.Others.Where(other => other.Place is not null).OrderBy(other => other.Name, StringComparer.Ordinal))
        {
            var (fromX, fromY) = OnPage(layout, plan.State.Trunks.First(trunk => trunk.Name == other.Name));
            var (toX, toY) = OnPage(layout, other);
            svg.Line("gs-either", fromX, fromY, toX, toY, other.Trunk.Origin.Id);
        }

        foreach (var (trunk, ellipse) in plan.Ellipses)
        {
            WriteEllipse(svg, layout, trunk, ellipse);
        }

        foreach (var trunk in layout.Trunks.Where(trunk => known.Contains(trunk.Name)))
        {
            svg.BeginPath("gs-control", trunk.Origin);
            svg.MoveTo(trunk.X, trunk.Y - ControlReach);
            svg.LineTo(trunk.X + (ControlReach * 0.87), trunk.Y + (ControlReach * 0.6));
            svg.LineTo(trunk.X - (ControlReach * 0.87), trunk.Y + (ControlReach * 0.6));
            svg.ClosePath();
            svg.EndPath();
        }

        lines.WriteLabels(svg, labels);
    }

    private static (double X, double Y) OnPage(PlanLayout layout, TrunkState trunk) => (layout.ToX(trunk.Place!.Value.X.Millimetres), layout.ToY(trunk.Place!.Value.Y.Millimetres));

    private void WriteEllipse(SvgWriter svg, PlanLayout layout, TrunkState trunk, ErrorEllipse ellipse)
    {
        svg.BeginPath("gs-ellipse", trunk.Trunk.Origin.Id);
        var outline = Outline(layout, trunk, ellipse, 48);
        svg.MoveTo(outline[0].X, outline[0].Y);
        foreach (var (x, y) in outline[1..])
        {
            svg.LineTo(x, y);
        }

        svg.ClosePath();
        svg.EndPath();
    }

    private (double X, double Y)[] Outline(PlanLayout layout, TrunkState trunk, ErrorEllipse ellipse, int corners)
    {
        var (x, y) = OnPage(layout, trunk);
        var (along, across) = (ellipse.HalfLong.Millimetres * layout.Scale * Factor, ellipse.HalfShort.Millimetres * layout.Scale * Factor);
        return [.. Enumerable.Range(0, corners).Select(corner =>
        {
            var (sine, cosine) = Math.SinCos(corner * Math.Tau / corners);
            var right = (along * cosine * ellipse.Toward.Rightward) + (across * sine * ellipse.Toward.Backward);
            var back = (along * cosine * ellipse.Toward.Backward) - (across * sine * ellipse.Toward.Rightward);
            return (x + right, y - back);
        })];
    }
}
