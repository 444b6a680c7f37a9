namespace GroveSpec.Craft.Survey;

/// <summary>
/// Trunks that hang together by readings. Some stand at known places; all places are in millimetres. What is not fixed is
/// found by the least sum of squared misfits.
/// </summary>
internal sealed class SurveyNetwork
{
    private const int MostRounds = 200;

    // A fit that may be given up is looked at every so many rounds, and is without hope when it is so much worse and so little better.
    private const int RoundsBetweenLooks = 4;
    private const double MuchWorse = 4;
    private const double LittleBetter = 0.9;

    // Of the sum of squares: a step that promises less than this changes no digit of a place that counts, nor of a sum where only sums are held against each other.
    private const double NoMore = 1e-13;
    private const double NoMoreOfSum = 1e-9;
    private const double NoMoreInSquares = 1e-20;

    private readonly int[] columns;

    /// <summary>Makes one.</summary>
    /// <param name="isKnown">Which trunks stand at a known place.</param>
    /// <param name="readings">The readings, none between two known places.</param>
    /// <param name="pinned">Coordinates that are kept where nothing known holds the whole: two for each trunk, first to the right, then to the back.</param>
    /// <param name="cancellation">Ends the fits of the network and of those that are made of it.</param>
    public SurveyNetwork(bool[] isKnown, NetworkReading[] readings, bool[]? pinned = null, CancellationToken cancellation = default)
    {
        IsKnown = isKnown;
        Readings = readings;
        Hand = ReadingPrecision.Hand(readings.Length > 0 ? readings.Max(reading => reading.Millimetres) : 0);
        Cancellation = cancellation;
        columns = new int[2 * isKnown.Length];
        for (var coordinate = 0; coordinate < columns.Length; coordinate++)
        {
            columns[coordinate] = isKnown[coordinate / 2] || (pinned?[coordinate] ?? false) ? -1 : Unknowns++;
        }
    }

    /// <summary>Which trunks stand at a known place.</summary>
    public bool[] IsKnown { get; }

    /// <summary>The readings.</summary>
    public NetworkReading[] Readings { get; }

    /// <summary>What a tape is right to over its distances, in millimetres.</summary>
    public double Hand { get; }

    /// <summary>Ends the work.</summary>
    public CancellationToken Cancellation { get; }

    /// <summary>How many trunks there are.</summary>
    public int Count => IsKnown.Length;

    /// <summary>How many coordinates are sought.</summary>
    public int Unknowns { get; }

    /// <summary>The column of a coordinate among those sought, or −1.</summary>
    public int Column(int trunk, int axis) => columns[(2 * trunk) + axis];

    /// <summary>The same network with other coordinates kept.</summary>
    public SurveyNetwork Pin(bool[] pinned) => new(IsKnown, Readings, pinned, Cancellation);

    /// <summary>The same network without some readings.</summary>
    public SurveyNetwork Without(Func<NetworkReading, bool> isLeftOut)
    {
        var pinned = new bool[columns.Length];
        for (var coordinate = 0; coordinate < columns.Length; coordinate++)
        {
            pinned[coordinate] = columns[coordinate] < 0;
        }

        return new(IsKnown, [.. Readings.Where(reading => !isLeftOut(reading))], pinned, Cancellation);
    }

    /// <summary>Moves places to where the sum of squared misfits is least, by damped Gauss–Newton steps (Levenberg 1944, Marquardt 1963), damped by how well the last step kept its promise (Nielsen 1999; from memory).</summary>
    /// <param name="places">Two numbers for each trunk; those sought are changed.</param>
    /// <param name="least">A sum that was reached already: a fit that goes down slowly far above it is given up. Without one every fit is followed to its end.</param>
    /// <param name="isSumAsked">Whether only the sum is asked for, and not the last digit of the places.</param>
    /// <returns>The sum of squared misfits, in mm².</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public double Fit(double[] places, double least = double.PositiveInfinity, bool isSumAsked = false)
    {
        var misfit = SumOfSquares(places);
        if (Unknowns == 0)
        {
            return misfit;
        }

        var normal = new double[Unknowns * Unknowns];
        var damped = new double[Unknowns * Unknowns];
        var (gradient, step, tried) = (new double[Unknowns], new double[Unknowns], new double[places.Length]);
        var (damping, raise, before) = (1e-3, 2.0, misfit);
        FillNormal(places, normal, gradient);
        for (var round = 0; round < MostRounds && damping < 1e9; round++)
        {
            Cancellation.ThrowIfCancellationRequested();
            if (round % RoundsBetweenLooks == 0 && round > 0)
            {
                if (misfit > MuchWorse * least && misfit > LittleBetter * before)
                {
                    break;
                }

                before = misfit;
            }

            normal.CopyTo(damped, 0);
            gradient.CopyTo(step, 0);
            for (var index = 0; index < Unknowns; index++)
            {
                damped[(index * Unknowns) + index] += damping;
            }

            if (!SymmetricMatrix.Solve(damped, step))
            {
                (damping, raise) = (Math.Max(damping * raise, 1e-9), 2 * raise);
                continue;
            }

            var (longest, promised) = (0.0, 0.0);
            for (var column = 0; column < Unknowns; column++)
            {
                promised += step[column] * (gradient[column] + (damping * step[column]));
            }

            if (promised <= ((isSumAsked ? NoMoreOfSum : NoMore) * misfit) + NoMoreInSquares)
            {
                break;
            }

            for (var coordinate = 0; coordinate < columns.Length; coordinate++)
            {
                var column = columns[coordinate];
                tried[coordinate] = column < 0 ? places[coordinate] : places[coordinate] - step[column];
                longest = column < 0 ? longest : Math.Max(longest, Math.Abs(step[column]));
            }

            var after = SumOfSquares(tried);
            if (after < misfit)
            {
                tried.CopyTo(places, 0);
                var share = (2 * (misfit - after) / promised) - 1;
                (damping, raise) = (Math.Max(damping * Math.Max(1 / 3.0, 1 - (share * share * share)), 1e-12), 2);
                misfit = after;
                FillNormal(places, normal, gradient);
            }
            else if (longest < 1e-9)
            {
                break;
            }
            else
            {
                (damping, raise) = (damping * raise, 2 * raise);
            }
        }

        return misfit;
    }

    /// <summary>The sum of squared misfits.</summary>
    public double SumOfSquares(double[] places)
    {
        var sum = 0.0;
        foreach (var reading in Readings)
        {
            var misfit = Distance(places, reading.From, reading.To) - reading.Millimetres;
            sum += misfit * misfit;
        }

        return sum;
    }

    /// <summary>The normal matrix of the coordinates sought.</summary>
    public double[] Normal(double[] places)
    {
        var normal = new double[Unknowns * Unknowns];
        FillNormal(places, normal, new double[Unknowns]);
        return normal;
    }

    /// <summary>The distance between two trunks.</summary>
    public static double Distance(double[] places, int one, int other)
    {
        double dx = places[2 * one] - places[2 * other], dy = places[(2 * one) + 1] - places[(2 * other) + 1];
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    /// <summary>How the distance between two trunks grows with the coordinates sought: columns and slopes, those that are kept with column −1.</summary>
    public void Slopes(double[] places, int from, int to, Span<(int Column, double Slope)> slopes)
    {
        double dx = places[2 * from] - places[2 * to], dy = places[(2 * from) + 1] - places[(2 * to) + 1];
        var distance = Math.Sqrt((dx * dx) + (dy * dy));
        (dx, dy) = distance > 0 ? (dx / distance, dy / distance) : (1, 0);
        slopes[0] = (Column(from, 0), dx);
        slopes[1] = (Column(from, 1), dy);
        slopes[2] = (Column(to, 0), -dx);
        slopes[3] = (Column(to, 1), -dy);
    }

    private void FillNormal(double[] places, double[] normal, double[] gradient)
    {
        Array.Clear(normal);
        Array.Clear(gradient);
        Span<(int Column, double Slope)> slopes = stackalloc (int, double)[4];
        foreach (var reading in Readings)
        {
            Slopes(places, reading.From, reading.To, slopes);
            var misfit = Distance(places, reading.From, reading.To) - reading.Millimetres;
            foreach (var (row, slope) in slopes)
            {
                if (row < 0)
                {
                    continue;
                }

                gradient[row] += slope * misfit;
                foreach (var (column, other) in slopes)
                {
                    if (column >= 0)
                    {
                        normal[(row * Unknowns) + column] += slope * other;
                    }
                }
            }
        }
    }
}
