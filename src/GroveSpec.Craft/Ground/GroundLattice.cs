using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>Places on a square lattice, of which it is known which are free. All round it lies a row of places that are not.</summary>
public sealed class GroundLattice
{
    /// <summary>What takes the places of the row all round.</summary>
    public const int Beyond = -1;

    /// <summary>Parts that work side by side take turns of so many rows.</summary>
    internal const int RowsAtOnce = 8;

    private readonly bool[] isFree;
    private readonly int[] takers;
    private readonly long left;
    private readonly long front;

    private GroundLattice(long left, long front, Length step, int columns, int rows)
    {
        (this.left, this.front, Step, Columns, Rows) = (left, front, step, columns, rows);
        (isFree, takers) = (new bool[columns * rows], new int[columns * rows]);
        Array.Fill(takers, Beyond);
    }

    /// <summary>From one place to the next.</summary>
    public Length Step { get; }

    /// <summary>How many places lie side by side.</summary>
    public int Columns { get; }

    /// <summary>How many rows lie behind each other.</summary>
    public int Rows { get; }

    /// <summary>Tests the places between two corners.</summary>
    /// <param name="least">The corner at the left and front.</param>
    /// <param name="greatest">The corner at the right and back.</param>
    /// <param name="step">From one place to the next, above zero; the places are whole multiples of it.</param>
    /// <param name="tests">The test, once for each piece of work that may be done beside others; all give the same answers.</param>
    /// <param name="sideBySide">Does so many pieces of work, each told its number from 0, at once or one after another.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>The lattice.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static GroundLattice Of(PlanPoint least, PlanPoint greatest, Length step, IReadOnlyList<IPlaceTest> tests, Action<int, Action<int>> sideBySide, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(tests);
        ArgumentNullException.ThrowIfNull(sideBySide);
        long Before(long value) => (long)Math.Floor(value / (double)step.Nanometres) - 1;
        long After(long value) => (long)Math.Ceiling(value / (double)step.Nanometres) + 1;
        long left = Before(least.X.Nanometres), front = Before(least.Y.Nanometres);
        var lattice = new GroundLattice(left, front, step, (int)(After(greatest.X.Nanometres) - left + 1), (int)(After(greatest.Y.Nanometres) - front + 1));
        foreach (var isFirst in (ReadOnlySpan<bool>)[true, false])
        {
            sideBySide(tests.Count, part => lattice.Test(isFirst, part, tests, cancellation));
        }

        return lattice;
    }

    /// <summary>
    /// Every other place of every other row is tested first; then one between them only where those beside it are not all taken
    /// by the very same: what takes ground has no holes as small as two steps but by a rare chance. Rows go to the parts in
    /// turns of some, so that each has as much to do.
    /// </summary>
    private void Test(bool isFirst, int part, IReadOnlyList<IPlaceTest> tests, CancellationToken cancellation)
    {
        var test = tests[part];
        for (var row = 1; row < Rows - 1; row++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (var column = 1; column < Columns - 1 && row / RowsAtOnce % tests.Count == part; column++)
            {
                if ((column % 2 == 1 && row % 2 == 1) == isFirst)
                {
                    var taker = isFirst ? 0 : TakerRound(column, row);
                    taker = taker > 0 ? taker : test.TakerOf(PlaceOf(column, row));
                    takers[(row * Columns) + column] = taker;
                    isFree[(row * Columns) + column] = taker == 0;
                }
            }
        }
    }

    /// <summary>What takes all the places beside one that were tested first; 0 where that differs, or one is free or lies beyond.</summary>
    private int TakerRound(int column, int row)
    {
        var (across, along) = (column % 2 == 1 ? 0 : 1, row % 2 == 1 ? 0 : 1);
        if (column + across >= Columns - 1 || row + along >= Rows - 1 || column - across < 1 || row - along < 1)
        {
            return 0;
        }

        var taker = takers[((row - along) * Columns) + column - across];
        return taker == takers[((row - along) * Columns) + column + across]
            && taker == takers[((row + along) * Columns) + column - across]
            && taker == takers[((row + along) * Columns) + column + across] ? taker : 0;
    }

    /// <summary>Whether a place is free.</summary>
    /// <param name="column">Its column, from 0 at the left.</param>
    /// <param name="row">Its row, from 0 at the front.</param>
    /// <returns>True when it is.</returns>
    public bool IsFree(int column, int row) => isFree[(row * Columns) + column];

    /// <summary>What takes a place.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="row">Its row.</param>
    /// <returns>The taker as the test has it; 0 for a place that is free, <see cref="Beyond"/> for one of the row all round.</returns>
    public int TakerOf(int column, int row) => takers[(row * Columns) + column];

    /// <summary>Where a place lies.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="row">Its row.</param>
    /// <returns>The place.</returns>
    public PlanPoint PlaceOf(int column, int row) => new(new Length((left + column) * Step.Nanometres), new Length((front + row) * Step.Nanometres));

    /// <summary>How far each place lies from the nearest that is not free, in steps, row by row: the exact distance transform of Felzenszwalb and Huttenlocher 2012, "Distance transforms of sampled functions" (the algorithm from memory).</summary>
    /// <returns>The distances; 0 for a place that is not free.</returns>
    public double[] RoomInSteps()
    {
        var squares = new double[isFree.Length];
        var size = Math.Max(Columns, Rows);
        double[] line = new double[size], result = new double[size], borders = new double[size + 1];
        var hulls = new int[size];
        for (var index = 0; index < squares.Length; index++)
        {
            squares[index] = isFree[index] ? double.MaxValue / 4 : 0;
        }

        for (var column = 0; column < Columns; column++)
        {
            for (var row = 0; row < Rows; row++)
            {
                line[row] = squares[(row * Columns) + column];
            }

            Transform(line, Rows, result, hulls, borders);
            for (var row = 0; row < Rows; row++)
            {
                squares[(row * Columns) + column] = result[row];
            }
        }

        for (var row = 0; row < Rows; row++)
        {
            Array.Copy(squares, row * Columns, line, 0, Columns);
            Transform(line, Columns, result, hulls, borders);
            for (var column = 0; column < Columns; column++)
            {
                squares[(row * Columns) + column] = Math.Sqrt(result[column]);
            }
        }

        return squares;
    }

    /// <summary>The lower envelope of the parabolas over a line of values, both ends of which are 0.</summary>
    private static void Transform(double[] values, int count, double[] result, int[] hulls, double[] borders)
    {
        var last = 0;
        hulls[0] = 0;
        (borders[0], borders[1]) = (double.NegativeInfinity, double.PositiveInfinity);
        for (var place = 1; place < count; place++)
        {
            if (values[place] >= double.MaxValue / 4)
            {
                continue;
            }

            var crossing = Crossing(values, hulls[last], place);
            while (crossing <= borders[last])
            {
                last--;
                crossing = Crossing(values, hulls[last], place);
            }

            last++;
            hulls[last] = place;
            (borders[last], borders[last + 1]) = (crossing, double.PositiveInfinity);
        }

        last = 0;
        for (var place = 0; place < count; place++)
        {
            while (borders[last + 1] < place)
            {
                last++;
            }

            double offset = place - hulls[last];
            result[place] = (offset * offset) + values[hulls[last]];
        }
    }

    private static double Crossing(double[] values, int one, int other) =>
        (values[other] + ((double)other * other) - (values[one] + ((double)one * one))) / (2.0 * (other - one));
}
