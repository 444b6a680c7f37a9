namespace GroveSpec.Craft.Fronts;

/// <summary>A range of bearings from which a planting is looked at, clockwise, in radians, and what the turned frame makes of places there.</summary>
internal readonly struct TurnRange
{
    private readonly double sineFrom;
    private readonly double cosineFrom;
    private readonly double sineTo;
    private readonly double cosineTo;

    /// <summary>Makes a range.</summary>
    /// <param name="from">Its beginning, in radians.</param>
    /// <param name="to">Its end, not less.</param>
    public TurnRange(double from, double to)
    {
        (From, To) = (from, to);
        (sineFrom, cosineFrom) = Math.SinCos(from);
        (sineTo, cosineTo) = from == to ? (sineFrom, cosineFrom) : Math.SinCos(to);
    }

    /// <summary>Its beginning.</summary>
    public double From { get; }

    /// <summary>Its end.</summary>
    public double To { get; }

    /// <summary>Where a place lies to the viewer's right: −x·cos + y·sin.</summary>
    /// <param name="x">To the right in the plan, in millimetres.</param>
    /// <param name="y">To the back in the plan.</param>
    /// <returns>Millimetres.</returns>
    public Ranged Across(double x, double y) => Wave(-x, y);

    /// <summary>Where a place lies beyond the plan's origin, away from the viewer: −y·cos − x·sin.</summary>
    /// <param name="x">To the right in the plan, in millimetres.</param>
    /// <param name="y">To the back in the plan.</param>
    /// <returns>Millimetres.</returns>
    public Ranged Beyond(double x, double y) => Wave(-y, -x);

    /// <summary>cosine·cos + sine·sin: exactly as far as it reaches over the range.</summary>
    /// <param name="cosine">The part that goes with the cosine.</param>
    /// <param name="sine">The part that goes with the sine.</param>
    /// <returns>The values and slopes.</returns>
    public Ranged Wave(double cosine, double sine)
    {
        double first = (cosine * cosineFrom) + (sine * sineFrom), firstSlope = (sine * cosineFrom) - (cosine * sineFrom);
        if (From == To)
        {
            return new(first, first, firstSlope, firstSlope);
        }

        var size = Math.Sqrt((cosine * cosine) + (sine * sine));
        if (To - From >= Math.PI)
        {
            return new(-size, size, -size, size);
        }

        // Over less than half a turn there is at most one peak or trough, and the slopes at the ends tell of it.
        double last = (cosine * cosineTo) + (sine * sineTo), lastSlope = (sine * cosineTo) - (cosine * sineTo);
        var (low, high) = Reach(first, last, firstSlope, lastSlope, size);
        var (falling, rising) = Reach(firstSlope, lastSlope, -first, -last, size);
        return new(low, high, falling, rising);
    }

    private static (double Low, double High) Reach(double first, double last, double firstSlope, double lastSlope, double size) => (
        firstSlope < 0 && lastSlope > 0 ? -size : Math.Min(first, last),
        firstSlope > 0 && lastSlope < 0 ? size : Math.Max(first, last));
}
