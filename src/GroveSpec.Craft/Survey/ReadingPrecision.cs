namespace GroveSpec.Craft.Survey;

/// <summary>How far readings are off, from their own misfits where there are enough of them.</summary>
internal readonly record struct ReadingPrecision
{
    /// <summary>What is taken while too few readings check each other: half a millimetre, common practice for a tape held to bark by hand.</summary>
    public const double AssumedMillimetres = 0.5;

    /// <summary>From so many spare readings on their own misfits count.</summary>
    public const int FewestSpare = 3;

    // No tape is read closer; it only keeps readings that happen to agree from promising everything.
    private const double Finest = 0.05;

    /// <summary>The precision of a fit.</summary>
    /// <param name="sumOfSquares">The sum of squared misfits, in mm².</param>
    /// <param name="spare">Readings beyond those that places need.</param>
    public ReadingPrecision(double sumOfSquares, int spare)
    {
        Spare = spare;
        IsAssumed = spare < FewestSpare;
        Deviation = IsAssumed ? AssumedMillimetres : Math.Max(Finest, Math.Sqrt(sumOfSquares / spare));

        // Two coordinates at once, 95 in 100: χ² with two degrees of freedom has −2 ln 0.05, F with two and ν has the closed form below.
        EllipseFactor = IsAssumed ? Math.Sqrt(-2 * Math.Log(0.05)) : Math.Sqrt(2 * FisherQuantile(spare, 0.05));
    }

    /// <summary>Readings beyond those that places need.</summary>
    public int Spare { get; }

    /// <summary>Whether it was assumed.</summary>
    public bool IsAssumed { get; }

    /// <summary>The standard deviation of a reading, in millimetres.</summary>
    public double Deviation { get; }

    /// <summary>By how much a standard deviation is stretched for an ellipse of 95 in 100.</summary>
    public double EllipseFactor { get; }

    /// <summary>The value that F with 2 and ν degrees of freedom exceeds with a probability: (ν/2)(p^(−2/ν) − 1), from its integral.</summary>
    /// <param name="freedom">ν, from 1.</param>
    /// <param name="probability">p.</param>
    /// <returns>The value.</returns>
    internal static double FisherQuantile(int freedom, double probability) => freedom / 2.0 * (Math.Pow(probability, -2.0 / freedom) - 1);
}
