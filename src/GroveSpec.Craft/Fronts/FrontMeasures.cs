using System.Globalization;

namespace GroveSpec.Craft.Fronts;

/// <summary>
/// Follows the measures of a view while the planting turns: which trunks follow each other, whose tops do, and what covers a
/// trunk. Where a measure ends to be made of the same things, it is asked where it came to its limit.
/// </summary>
/// <param name="shapes">The trunks.</param>
/// <param name="limits">The limits.</param>
/// <param name="found">Takes the ranges.</param>
internal sealed class FrontMeasures(TurnedShapes shapes, FrontLimits limits, List<(double From, double To)> found)
{
    private const double GapRounding = 4e-6;
    private const double TopRounding = 1e-5;
    private const double CoverRounding = 4e-6;

    private readonly List<(int Left, int Right)> strips = [];
    private Dictionary<string, Measure> lasting = new(StringComparer.Ordinal);
    private Dictionary<string, Measure> next = new(StringComparer.Ordinal);
    private double reached;

    /// <summary>Looks at a range of bearings in which no order changes.</summary>
    /// <param name="table">The planting, turned to a bearing within the range.</param>
    /// <param name="from">The beginning of the range, in radians.</param>
    /// <param name="to">Its end.</param>
    public void Look(TurnTable table, double from, double to)
    {
        next.Clear();
        if (limits.EvenPercent is not null)
        {
            Threes(table.Order, 'g', from, Gaps);
        }

        if (limits.LevelPercent is not null)
        {
            Threes(table.TopOrder, 't', from, Tops);
        }

        if (limits.HiddenPercent is not null)
        {
            foreach (var trunk in table.Order)
            {
                table.Strips(trunk, strips);

                // Nothing, or all, is covered of it while this lasts.
                if (strips.Count > 1 || (strips.Count == 1 && strips[0] != (trunk, trunk)))
                {
                    Hold($"h{trunk} {string.Join(' ', strips.Select(strip => string.Create(CultureInfo.InvariantCulture, $"{strip.Left},{strip.Right}")))}", from, () => Cover(trunk, [.. strips]));
                }
            }
        }

        foreach (var (key, measure) in lasting)
        {
            if (!next.ContainsKey(key))
            {
                measure.End(reached, found);
            }
        }

        (lasting, next, reached) = (next, lasting, to);
    }

    /// <summary>Asks the measures that last to the end of the turn.</summary>
    public void Finish()
    {
        foreach (var measure in lasting.Values)
        {
            measure.End(reached, found);
        }

        lasting.Clear();
    }

    private void Threes(ReadOnlySpan<int> order, char kind, double from, Func<int, int, int, Measure> make)
    {
        for (var index = 2; index < order.Length; index++)
        {
            var (left, middle, right) = (order[index - 2], order[index - 1], order[index]);
            Hold(string.Create(CultureInfo.InvariantCulture, $"{kind}{left},{middle},{right}"), from, () => make(left, middle, right));
        }
    }

    private void Hold(string key, double from, Func<Measure> make)
    {
        if (!lasting.TryGetValue(key, out var measure))
        {
            measure = make();
            measure.From = from;
        }

        next[key] = measure;
    }

    /// <summary>Two gaps are even while the shorter is longer than its share of the other.</summary>
    private Measure Gaps(int left, int middle, int right)
    {
        var rest = 1 - (limits.EvenPercent!.Value / 100);
        return new(
            GapRounding,
            range => Gap(range, left, middle) - (rest * Gap(range, middle, right)),
            range => Gap(range, middle, right) - (rest * Gap(range, left, middle)));
    }

    private Ranged Gap(TurnRange range, int left, int right) => shapes.Foot(range, right) - shapes.Foot(range, left);

    /// <summary>Three tops are level while the middle one is no further off the line than its share of the line.</summary>
    private Measure Tops(int left, int middle, int right)
    {
        if (shapes.IsSameTip(left, right))
        {
            return new(TopRounding);
        }

        var share = limits.LevelPercent!.Value / 100;
        return new(TopRounding, range => Off(range, 1), range => Off(range, -1));

        Ranged Off(TurnRange range, int side)
        {
            var (a, b, c) = (shapes.Tip(range, left), shapes.Tip(range, middle), shapes.Tip(range, right));
            var (ux, uy, vx, vy) = (c.Across - a.Across, c.Up - a.Up, b.Across - a.Across, b.Up - a.Up);
            var square = ux.Square() + uy.Square();

            // Rounding reaches as far as both arms are long, so it is measured against them.
            return ((ux * vy) - (uy * vx) - (side * share * square)) / (square.Root() + (vx.Square() + vy.Square()).Root());
        }
    }

    /// <summary>A trunk is hidden while the strips that are covered are at least their share of its width.</summary>
    private Measure Cover(int trunk, (int Left, int Right)[] covered)
    {
        var share = limits.HiddenPercent!.Value / 100;
        return new(CoverRounding, range =>
        {
            Ranged sum = 0;
            foreach (var (left, right) in covered)
            {
                sum += shapes.Edge(range, right, 1) - shapes.Edge(range, left, -1);
            }

            return sum - (share * (shapes.Edge(range, trunk, 1) - shapes.Edge(range, trunk, -1)));
        });
    }

    private sealed class Measure(double tolerance, params Func<TurnRange, Ranged>[] expressions)
    {
        public double From { get; set; }

        public void End(double to, List<(double From, double To)> found)
        {
            foreach (var expression in expressions)
            {
                NearZero.Find(expression, From, to, tolerance, found);
            }
        }
    }
}
