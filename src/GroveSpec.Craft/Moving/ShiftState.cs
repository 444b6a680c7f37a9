namespace GroveSpec.Craft.Moving;

/// <summary>Where the movable trunks are, and what is amiss there.</summary>
/// <param name="count">How many there are; all are where they are at first.</param>
internal sealed class ShiftState(int count)
{
    /// <summary>Trunks at some places.</summary>
    /// <param name="rightward">The way of each to the right, in millimetres; copied.</param>
    /// <param name="backward">And to the back.</param>
    public ShiftState(ReadOnlySpan<double> rightward, ReadOnlySpan<double> backward)
        : this(0) => (Rightward, Backward) = (rightward.ToArray(), backward.ToArray());

    /// <summary>The way of each to the right, in millimetres.</summary>
    public double[] Rightward { get; private init; } = new double[count];

    /// <summary>The way of each to the back.</summary>
    public double[] Backward { get; private init; } = new double[count];

    /// <summary>The weight of what is amiss.</summary>
    public double Weight { get; set; }

    /// <summary>The sum of the ways.</summary>
    public double Distance
    {
        get
        {
            var sum = 0.0;
            for (var place = 0; place < Rightward.Length; place++)
            {
                sum += WayOf(place);
            }

            return sum;
        }
    }

    /// <summary>The places of those that are not where they were at first.</summary>
    public IEnumerable<int> Shifted => Enumerable.Range(0, Rightward.Length).Where(place => WayOf(place) > 0);

    /// <summary>The way of one.</summary>
    /// <param name="place">Which movable.</param>
    /// <returns>Its way, in millimetres.</returns>
    public double WayOf(int place) => Math.Sqrt((Rightward[place] * Rightward[place]) + (Backward[place] * Backward[place]));

    /// <summary>The same with one trunk elsewhere.</summary>
    /// <param name="place">Which movable.</param>
    /// <param name="rightward">Its way to the right.</param>
    /// <param name="backward">And to the back.</param>
    /// <returns>The new state, its weight not known.</returns>
    public ShiftState With(int place, double rightward, double backward)
    {
        var other = new ShiftState(0) { Rightward = [.. Rightward], Backward = [.. Backward], Weight = Weight };
        (other.Rightward[place], other.Backward[place]) = (rightward, backward);
        return other;
    }

    /// <summary>Whether less is amiss than in another, or as much after shorter ways.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True when this one is better.</returns>
    public bool IsBetterThan(ShiftState other) => Weight < other.Weight || (Weight == other.Weight && Distance < other.Distance);
}
