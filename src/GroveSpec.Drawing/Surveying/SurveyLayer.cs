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
    private const double ControlReach = 4.5;
    private const double Seen = 14;
    private const double LargestEllipse = 34;
    private static readonly int[] Factors = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    private readonly SurveyedPlan plan;
    private readonly TapeSurvey survey;
    private readonly UnitSystem units;
    private readonly HashSet<string> known;
    private readonly HashSet<string> beside;
    private SurveyLines? lines;
    private readonly double scale;

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
        scale = PlanLayout.Of(plan.State, options, this).Scale;
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

            said.Add($"Lines are readings with what was read, in {(units == UnitSystem.Inch ? "inches" : "mm")}; one in dots and dashes does not fit, or may not; a dashed one is to be read next.");
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
    public override StyleSheet Sheet() => SurveyStyle.Sheet();

    /// <inheritdoc/>
    public override void WriteBelow(SvgWriter svg, PlanLayout layout)
    {
        foreach (var part in plan.Apart)
        {
            var drawn = part.Select(trunk => Box.About(layout.ToX(trunk.Place!.Value.X.Millimetres), layout.ToY(trunk.Place!.Value.Y.Millimetres), ApartRoom, ApartRoom));
            svg.Rectangle("gs-apart", drawn.Aggregate((one, other) => one.With(other)));
        }

        Lines(layout).WriteBelow(svg);
    }

    /// <inheritdoc/>
    public override void Ask(LabelPlacer placer, PlanLayout layout)
    {
        foreach (var (trunk, ellipse) in plan.Ellipses)
        {
            var (x, y) = OnPage(layout, trunk);
            placer.Obstacles.AvoidDisc(x, y, Math.Min(LargestEllipse, ellipse.HalfLong.Millimetres * layout.Scale * Factor), 9);
        }

        Lines(layout).Ask(placer);
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

        Lines(layout).WriteLabels(svg, labels);
    }

    private SurveyLines Lines(PlanLayout layout) => lines ??= new SurveyLines(layout, survey, plan, units);

    private static (double X, double Y) OnPage(PlanLayout layout, TrunkState trunk) => (layout.ToX(trunk.Place!.Value.X.Millimetres), layout.ToY(trunk.Place!.Value.Y.Millimetres));

    private void WriteEllipse(SvgWriter svg, PlanLayout layout, TrunkState trunk, ErrorEllipse ellipse)
    {
        const int Pieces = 48;
        var (x, y) = OnPage(layout, trunk);
        var (along, across) = (ellipse.HalfLong.Millimetres * layout.Scale * Factor, ellipse.HalfShort.Millimetres * layout.Scale * Factor);
        svg.BeginPath("gs-ellipse", trunk.Trunk.Origin.Id);
        for (var piece = 0; piece < Pieces; piece++)
        {
            var (sine, cosine) = Math.SinCos(piece * Math.Tau / Pieces);
            var (right, back) = ((along * cosine * ellipse.Toward.Rightward) + (across * sine * ellipse.Toward.Backward), (along * cosine * ellipse.Toward.Backward) - (across * sine * ellipse.Toward.Rightward));
            if (piece == 0)
            {
                svg.MoveTo(x + right, y - back);
            }
            else
            {
                svg.LineTo(x + right, y - back);
            }
        }

        svg.ClosePath();
        svg.EndPath();
    }
}
