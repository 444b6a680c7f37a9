namespace GroveSpec.Craft.Fronts;

/// <summary>
/// All values that an expression takes over a range of turning, and all its slopes there: interval arithmetic with one
/// derivative (Moore, Interval Analysis, 1966, from memory). Rounding is not directed outward; whoever asks allows for it.
/// </summary>
/// <param name="Low">The least value.</param>
/// <param name="High">The greatest.</param>
/// <param name="Falling">The least slope, per radian.</param>
/// <param name="Rising">The greatest.</param>
internal readonly record struct Ranged(double Low, double High, double Falling, double Rising)
{
    /// <summary>A constant.</summary>
    /// <param name="value">Its value.</param>
    public static implicit operator Ranged(double value) => new(value, value, 0, 0);

    public static Ranged operator +(Ranged one, Ranged other) => new(one.Low + other.Low, one.High + other.High, one.Falling + other.Falling, one.Rising + other.Rising);

    public static Ranged operator -(Ranged one, Ranged other) => new(one.Low - other.High, one.High - other.Low, one.Falling - other.Rising, one.Rising - other.Falling);

    public static Ranged operator *(double factor, Ranged one) => factor >= 0
        ? new(factor * one.Low, factor * one.High, factor * one.Falling, factor * one.Rising)
        : new(factor * one.High, factor * one.Low, factor * one.Rising, factor * one.Falling);

    public static Ranged operator *(Ranged one, Ranged other)
    {
        var (low, high) = Product(one.Low, one.High, other.Low, other.High);
        var (firstLow, firstHigh) = Product(one.Falling, one.Rising, other.Low, other.High);
        var (secondLow, secondHigh) = Product(one.Low, one.High, other.Falling, other.Rising);
        return new(low, high, firstLow + secondLow, firstHigh + secondHigh);
    }

    public static Ranged operator /(Ranged one, Ranged other) => one * other.Inverse();

    /// <summary>The square, which is never below zero.</summary>
    public Ranged Square()
    {
        var product = this * this;
        return Low < 0 && High > 0 ? product with { Low = 0 } : product;
    }

    /// <summary>The root of what is not below zero.</summary>
    public Ranged Root()
    {
        var (low, high) = (Math.Sqrt(Math.Max(Low, 0)), Math.Sqrt(Math.Max(High, 0)));
        if (low <= 0)
        {
            return new(low, high, double.NegativeInfinity, double.PositiveInfinity);
        }

        var (falling, rising) = Product(Falling, Rising, 0.5 / high, 0.5 / low);
        return new(low, high, falling, rising);
    }

    private Ranged Inverse()
    {
        if (Low <= 0 && High >= 0)
        {
            return new(double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity);
        }

        var (low, high) = (1 / High, 1 / Low);
        double squareLow = Math.Min(low * low, high * high), squareHigh = Math.Max(low * low, high * high);
        var (falling, rising) = Product(-Rising, -Falling, squareLow, squareHigh);
        return new(low, high, falling, rising);
    }

    private static (double Low, double High) Product(double oneLow, double oneHigh, double otherLow, double otherHigh)
    {
        double a = Times(oneLow, otherLow), b = Times(oneLow, otherHigh), c = Times(oneHigh, otherLow), d = Times(oneHigh, otherHigh);
        return (Math.Min(Math.Min(a, b), Math.Min(c, d)), Math.Max(Math.Max(a, b), Math.Max(c, d)));
    }

    /// <summary>Nothing times what has no end is nothing.</summary>
    private static double Times(double one, double other) => one == 0 || other == 0 ? 0 : one * other;
}
