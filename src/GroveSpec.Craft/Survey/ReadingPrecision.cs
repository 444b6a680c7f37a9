namespace GroveSpec.Craft.Survey;

/// <summary>How far readings are off, from their own misfits where there are enough of them.</summary>
internal readonly record struct ReadingPrecision
{
    /// <summary>What is taken while too few readings check each other: half a millimetre, common practice for a tape held to bark by hand.</summary>
    public const double AssumedMillimetres = 0.5;

    /// <summary>A tape read by hand is right to a millimetre or two: common practice. Readings that are off by more on the whole do not agree, whatever their own misfits make of it.</summary>
    public const double HandMillimetres = 2;

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
        RootMeanSquare = Math.Sqrt(sumOfSquares / Math.Max(1, spare));
        IsAssumed = spare < FewestSpare;
        Deviation = IsAssumed ? AssumedMillimetres : Math.Max(Finest, Math.Sqrt(sumOfSquares / spare));

        // Two coordinates at once, 95 in 100: χ² with two degrees of freedom has −2 ln 0.05, F with two and ν has the closed form below.
        EllipseFactor = IsAssumed ? Math.Sqrt(-2 * Math.Log(0.05)) : Math.Sqrt(2 * FisherQuantile(spare, 0.05));
    }

    /// <summary>Readings beyond those that places need.</summary>
    public int Spare { get; }

    /// <summary>What misfits come to on the whole, shared out over the readings to spare, in millimetres.</summary>
    public double RootMeanSquare { get; }

    /// <summary>Whether it was assumed.</summary>
    public bool IsAssumed { get; }

    /// <summary>The standard deviation of a reading, in millimetres.</summary>
    public double Deviation { get; }

    /// <summary>By how much a standard deviation is stretched for an ellipse of 95 in 100.</summary>
    public double EllipseFactor { get; }

    /// <summary>What a tape read by hand is right to: <see cref="HandMillimetres"/>, and over long distances a thousandth of them, since it sags and is read to the centimetre there (common practice).</summary>
    /// <param name="longest">The longest reading, in millimetres.</param>
    /// <returns>Millimetres.</returns>
    public static double Hand(double longest) => Math.Max(HandMillimetres, longest / 1000);

    /// <summary>Whether readings agree as a tape does: whether what is left of them, shared out over those to spare, is no more than a tape is right to.</summary>
    /// <param name="sumOfSquares">The sum of squared misfits, in mm².</param>
    /// <param name="spare">Readings beyond those that places need; with none they agree if they are met.</param>
    /// <param name="hand">What a tape is right to, in millimetres, as <see cref="Hand"/> gives it.</param>
    /// <returns>True when they do.</returns>
    public static bool Agrees(double sumOfSquares, int spare, double hand) => sumOfSquares <= hand * hand * Math.Max(1, spare);

    /// <summary>The value that F with 2 and ν degrees of freedom exceeds with a probability: (ν/2)(p^(−2/ν) − 1), from its integral.</summary>
    /// <param name="freedom">ν, from 1.</param>
    /// <param name="probability">p.</param>
    /// <returns>The value.</returns>
    internal static double FisherQuantile(int freedom, double probability) => freedom / 2.0 * (Math.Pow(probability, -2.0 / freedom) - 1);
}
