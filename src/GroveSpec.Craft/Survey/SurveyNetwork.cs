namespace GroveSpec.Craft.Survey;

/// <summary>
/// Trunks that hang together by readings. Some stand at known places; all places are in millimetres. What is not fixed is
/// found by the least sum of squared misfits.
/// </summary>
internal sealed class SurveyNetwork
{
    private const int MostRounds = 200;

    private readonly int[] columns;

    /// <summary>Makes one.</summary>
    /// <param name="isKnown">Which trunks stand at a known place.</param>
    /// <param name="readings">The readings, none between two known places.</param>
    /// <param name="pinned">Coordinates that are kept where nothing known holds the whole: two for each trunk, first to the right, then to the back.</param>
    public SurveyNetwork(bool[] isKnown, NetworkReading[] readings, bool[]? pinned = null)
    {
        IsKnown = isKnown;
        Readings = readings;
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

    /// <summary>How many trunks there are.</summary>
    public int Count => IsKnown.Length;

    /// <summary>How many coordinates are sought.</summary>
    public int Unknowns { get; }

    /// <summary>The column of a coordinate among those sought, or −1.</summary>
    public int Column(int trunk, int axis) => columns[(2 * trunk) + axis];

    /// <summary>The same network with other coordinates kept.</summary>
    public SurveyNetwork Pin(bool[] pinned) => new(IsKnown, Readings, pinned);

    /// <summary>The same network without some readings.</summary>
    public SurveyNetwork Without(Func<NetworkReading, bool> isLeftOut)
    {
        var pinned = new bool[columns.Length];
        for (var coordinate = 0; coordinate < columns.Length; coordinate++)
        {
            pinned[coordinate] = columns[coordinate] < 0;
        }

        return new(IsKnown, [.. Readings.Where(reading => !isLeftOut(reading))], pinned);
    }

    /// <summary>Moves places to where the sum of squared misfits is least, by damped Gauss–Newton steps (Levenberg 1944, Marquardt 1963).</summary>
    /// <param name="places">Two numbers for each trunk; those sought are changed.</param>
    /// <returns>The sum of squared misfits, in mm².</returns>
    public double Fit(double[] places)
    {
        var misfit = SumOfSquares(places);
        if (Unknowns == 0)
        {
            return misfit;
        }

        var normal = new double[Unknowns * Unknowns];
        var damped = new double[Unknowns * Unknowns];
        var (gradient, step, tried) = (new double[Unknowns], new double[Unknowns], new double[places.Length]);
        var damping = 1e-3;
        FillNormal(places, normal, gradient);
        for (var round = 0; round < MostRounds && damping < 1e9; round++)
        {
            normal.CopyTo(damped, 0);
            gradient.CopyTo(step, 0);
            for (var index = 0; index < Unknowns; index++)
            {
                damped[(index * Unknowns) + index] += damping;
            }

            if (!SymmetricMatrix.Solve(damped, step))
            {
                damping = Math.Max(damping * 10, 1e-9);
                continue;
            }

            var longest = 0.0;
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
                misfit = after;
                damping = Math.Max(damping / 10, 1e-12);
                if (longest < 1e-9)
                {
                    break;
                }

                FillNormal(places, normal, gradient);
            }
            else if (longest < 1e-9)
            {
                break;
            }
            else
            {
                damping *= 10;
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
