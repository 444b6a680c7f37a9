using GroveSpec.Checks.Standing;
using GroveSpec.Craft.Stand;
using GroveSpec.Drawing.Front;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Standing;

/// <summary>One index: what chance gives as blades of grass on an axis, this planting's value, and real stands below it.</summary>
internal sealed class StandRow
{
    private const double AxisLeft = 250;
    private const double AxisRight = 930;
    private const double Ground = 66;
    private const double NumbersFoot = 16;
    private const double EndGap = 10;
    private const double NameSize = 12;
    private const double NameLine = 15;
    private const double Slant = 12;
    private const double TextSize = 13.5;
    private const double TextLine = 17;
    private const double MarkReach = 6;

    private readonly StandDescription described;
    private readonly StandIndex index;
    private readonly double highest;
    private readonly double step;
    private readonly (string Name, double Value)[] stands;
    private readonly NameRows.Place[] places = [];
    private readonly int rows;
    private readonly List<string> told;

    /// <summary>Lays a row out.</summary>
    /// <param name="described">How the planting stands.</param>
    /// <param name="kind">The index.</param>
    /// <param name="tells">Whether what it means is told in sentences; why it tells nothing is told either way.</param>
    public StandRow(StandDescription described, StandIndexKind kind, bool tells)
    {
        this.described = described;
        index = described.Index(kind);
        var reach = new[] { index.Value ?? 0, index.Chance?.Percentiles[^1] ?? 0 }.Max();
        (highest, step) = kind == StandIndexKind.ClarkEvans ? ScaleOfSpacing(reach) : (Math.Max(1, Math.Ceiling(reach * 4) / 4), 0.25);
        stands = [.. NaturalStand.All.Where(stand => stand.ValueOf(kind) is not null).Select(stand => (stand.Name, stand.ValueOf(kind)!.Value)).OrderBy(stand => stand.Value)];
        if (stands.Length > 0)
        {
            (places, rows) = NameRows.Arrange([.. stands.Select(stand => X(stand.Value))], [.. stands.Select(stand => TextMetrics.ReservedWidth(stand.Name, NameSize, Face.Italic))], AxisLeft - 20, AxisRight + 10);
        }

        // What it means may stand in sentences beside the picture; why a row is empty is asked at the row.
        var sentence = tells ? StandWords.Tell(described, kind) : StandWords.WhyNot(described, kind);
        told = sentence.Length > 0 ? DrawnText.Wrapped(DrawnText.Clean(sentence), AxisRight - AxisLeft, TextSize) : [];
    }

    /// <summary>How much room it takes from top to bottom.</summary>
    public double Height => TextTop + (told.Count * TextLine) + 22;

    private static double NamesTop => Ground + NumbersFoot + 6;

    private double TextTop => NamesTop + 6 + (stands.Length == 0 ? 0 : Slant + (rows * NameLine));

    /// <summary>Writes it.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="top">Its upper edge.</param>
    public void Write(SvgWriter svg, double top)
    {
        svg.OpenGroup("gs-row", null, DrawnText.Clean($"{StandWords.Heading(index.Kind)}: {StandWords.Tell(described, index.Kind)}"));
        svg.Text("gs-index", Plate.Margin, top + Ground - 10, 20, StandWords.Heading(index.Kind));
        svg.Text("gs-remark", Plate.Margin, top + Ground + 9, 13, index.Reading switch
        {
            StandReading.Below => "lower than by chance",
            StandReading.Above => "higher than by chance",
            _ => "cannot tell",
        });
        WriteChance(svg, top);
        WriteAxis(svg, top);
        WriteStands(svg, top);
        WriteValue(svg, top);
        var line = top + TextTop;
        foreach (var said in told)
        {
            svg.Text("gs-key", AxisLeft, line + TextSize, TextSize, said);
            line += TextLine;
        }

        svg.CloseGroup();
    }

    /// <summary>Steps wide enough that the words at both ends stand clear of the next number.</summary>
    private static (double Highest, double Step) ScaleOfSpacing(double reach)
    {
        var whole = Math.Max(2, Math.Ceiling(reach));
        var step = whole <= 2 ? 0.5 : Math.Ceiling(whole / 5);
        return (Math.Ceiling(whole / step) * step, step);
    }

    private double X(double value) => AxisLeft + (Math.Clamp(value, 0, highest) / highest * (AxisRight - AxisLeft));

    private void WriteAxis(SvgWriter svg, double top)
    {
        svg.BeginPath("gs-axis");
        svg.MoveTo(AxisLeft, top + Ground);
        svg.LineTo(AxisRight, top + Ground);
        for (var tick = 0; tick * step <= highest + 1e-9; tick++)
        {
            svg.MoveTo(X(tick * step), top + Ground);
            svg.LineTo(X(tick * step), top + Ground + 4);
        }

        svg.EndPath();
        for (var tick = 0; tick * step <= highest + 1e-9; tick++)
        {
            svg.Text("gs-number", X(tick * step), top + Ground + NumbersFoot, Plate.SmallText, DrawnLength.Plain(tick * step, 2), TextAnchor.Middle);
        }

        var (least, greatest) = StandWords.Ends(index.Kind);
        svg.Text("gs-end-name", AxisLeft + EndGap, top + Ground + NumbersFoot, NameSize, least);
        svg.Text("gs-end-name", AxisRight - EndGap, top + Ground + NumbersFoot, NameSize, greatest, TextAnchor.End);
    }

    /// <summary>A blade for each hundredth of what chance gave: they stand close where it often falls. The heavy line on the ground is where nineteen of twenty fall.</summary>
    private void WriteChance(SvgWriter svg, double top)
    {
        if (index.Chance is not { } chance)
        {
            return;
        }

        foreach (var isWithin in (ReadOnlySpan<bool>)[false, true])
        {
            var hand = Wobble.Of(StandWords.Word(index.Kind), isWithin ? "within" : "beyond");
            var start = svg.Length;
            var count = 0;
            svg.BeginPath(isWithin ? "gs-blades" : "gs-blades-beyond");
            foreach (var value in chance.Percentiles.Where(value => (value >= chance.Low && value <= chance.High) == isWithin))
            {
                var (x, tall, bent) = (X(value), hand.Between(15, 27), hand.Between(-2.5, 2.5));
                svg.MoveTo(x, top + Ground);
                svg.QuadraticTo(x, top + Ground - (tall * 0.6), x + bent, top + Ground - tall);
                count++;
            }

            svg.EndPath();
            if (count == 0)
            {
                svg.TakeBack(start);
            }
        }

        svg.Line("gs-chance", X(chance.Low) - 1, top + Ground, X(chance.High) + 1, top + Ground);
    }

    private void WriteValue(SvgWriter svg, double top)
    {
        if (index.Value is not { } value)
        {
            return;
        }

        var isTold = index.Reading != StandReading.CannotTell;
        var (x, y) = (X(value), top + 26);
        svg.Line("gs-value-line", x, y, x, top + Ground);
        svg.BeginPath(isTold ? "gs-value-told" : "gs-value-open");
        svg.MoveTo(x, y - MarkReach);
        svg.LineTo(x + MarkReach, y);
        svg.LineTo(x, y + MarkReach);
        svg.LineTo(x - MarkReach, y);
        svg.ClosePath();
        svg.EndPath();
        var isRight = x < AxisRight - 60;
        svg.Text("gs-value", x + (isRight ? MarkReach + 5 : -MarkReach - 5), y + 5, 15, StandWords.Value(index), isRight ? TextAnchor.Start : TextAnchor.End);
    }

    private void WriteStands(SvgWriter svg, double top)
    {
        if (stands.Length == 0)
        {
            return;
        }

        var turn = top + NamesTop;
        svg.BeginPath("gs-thread");
        foreach (var place in places)
        {
            svg.MoveTo(place.Drop, turn - 4);
            svg.LineTo(place.Leader, turn + Slant);
            if (place.Row > 0)
            {
                svg.LineTo(place.Leader, turn + Slant + (place.Row * NameLine));
            }
        }

        svg.EndPath();
        for (var stand = 0; stand < stands.Length; stand++)
        {
            svg.Circle("gs-real", X(stands[stand].Value), top + Ground, 3.4);
            svg.Text("gs-real-name", places[stand].Left, turn + Slant + 1 + (places[stand].Row * NameLine) + (NameSize * TextMetrics.Ascent), NameSize, stands[stand].Name);
        }
    }
}
