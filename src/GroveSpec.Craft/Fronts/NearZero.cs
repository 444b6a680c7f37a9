namespace GroveSpec.Craft.Fronts;

/// <summary>
/// Finds where an expression of the bearing is nothing, or so nearly nothing that rounding might decide. It leaves no such place
/// out: a range is given up only where the bounds of the values and slopes exclude it, and halved where they do not.
/// </summary>
internal static class NearZero
{
    /// <summary>What is no wider than this, in radians, is not halved any more: a hundred thousandth of a degree.</summary>
    private const double Narrowest = 1.7e-7;

    /// <summary>Rounding of the bearing itself, in radians.</summary>
    private const double Slack = 1e-9;

    /// <summary>So often a range is halved before the rest is given back as it is, as for an expression that is nothing all round.</summary>
    private const int MostHalvings = 600;

    /// <summary>Finds the ranges.</summary>
    /// <param name="expression">The expression.</param>
    /// <param name="from">Where to begin, in radians.</param>
    /// <param name="to">Where to end.</param>
    /// <param name="tolerance">What counts as nothing, in the expression's unit.</param>
    /// <param name="found">Takes the ranges, in no particular order.</param>
    public static void Find(Func<TurnRange, Ranged> expression, double from, double to, double tolerance, List<(double From, double To)> found)
    {
        var open = new Stack<(double From, double To)>();
        open.Push((from, to));
        for (var halvings = 0; open.TryPop(out var range);)
        {
            var middle = (range.From + range.To) / 2;
            var values = Tightened(expression, range, middle);
            if (values.Low > tolerance || values.High < -tolerance)
            {
                continue;
            }

            if (range.To - range.From < Narrowest || halvings >= MostHalvings)
            {
                found.Add((range.From - Slack, range.To + Slack));
            }
            else if (values.Falling > 0 || values.Rising < 0)
            {
                Cross(expression, range, tolerance, values.Falling > 0 ? 1 : -1, found);
            }
            else
            {
                halvings++;
                open.Push((middle, range.To));
                open.Push((range.From, middle));
            }
        }
    }

    /// <summary>The value in the middle and the slopes bound the values too, and mostly better.</summary>
    private static Ranged Tightened(Func<TurnRange, Ranged> expression, (double From, double To) range, double middle)
    {
        var values = expression(new(range.From, range.To));
        var half = (range.To - range.From) / 2;
        var spread = Math.Max(Math.Abs(values.Falling), Math.Abs(values.Rising)) * half;
        if (!double.IsFinite(spread))
        {
            return new(double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity);
        }

        var centre = expression(new(middle, middle)).Low;
        return values with { Low = Math.Max(values.Low, centre - spread), High = Math.Min(values.High, centre + spread) };
    }

    /// <summary>Where an expression that only rises, or only falls, comes from one side of nothing to the other.</summary>
    private static void Cross(Func<TurnRange, Ranged> expression, (double From, double To) range, double tolerance, int sign, List<(double From, double To)> found)
    {
        double first = sign * expression(new(range.From, range.From)).Low, last = sign * expression(new(range.To, range.To)).Low;
        if (first > tolerance || last < -tolerance)
        {
            return;
        }

        var begins = first >= -tolerance ? range.From : Reach(expression, range, sign, -tolerance);
        var ends = last <= tolerance ? range.To : Reach(expression, range, sign, tolerance);
        found.Add((begins - Slack, ends + Slack));
    }

    /// <summary>Newton's steps, held between two sides that are halved where a step would leave them.</summary>
    private static double Reach(Func<TurnRange, Ranged> expression, (double From, double To) range, int sign, double level)
    {
        var (low, high) = range;
        var place = (low + high) / 2;
        for (var steps = 0; steps < 80 && high - low > 1e-12; steps++)
        {
            var at = expression(new(place, place));
            var over = (sign * at.Low) - level;
            (low, high) = over < 0 ? (place, high) : (low, place);
            var next = place - (over / (sign * at.Falling));
            if (Math.Abs(next - place) < 1e-12)
            {
                return place;
            }

            place = next > low && next < high ? next : (low + high) / 2;
        }

        return place;
    }
}
