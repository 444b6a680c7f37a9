namespace GroveSpec.Drawing.Scene;

/// <summary>A page cut into square cells, so that what lies about a place is found without looking at all of it. What lies off the page belongs to the nearest cell.</summary>
/// <param name="page">The page.</param>
internal sealed class CellGrid(Box page)
{
    /// <summary>The side of a cell, in pixels.</summary>
    public const double Side = 32;

    private readonly int columns = Math.Max(1, (int)Math.Ceiling(page.Width / Side));
    private readonly int rows = Math.Max(1, (int)Math.Ceiling(page.Height / Side));

    /// <summary>How many cells there are.</summary>
    public int Count => columns * rows;

    /// <summary>The number of a cell.</summary>
    /// <param name="column">Its column, from the left.</param>
    /// <param name="row">Its row, from the top.</param>
    public int Cell(int column, int row) => (row * columns) + column;

    /// <summary>The cell a point lies in.</summary>
    /// <param name="x">The point.</param>
    /// <param name="y">The point, downward.</param>
    public int At(double x, double y) => Cell(Column(x), Row(y));

    /// <summary>The cells a box touches.</summary>
    /// <param name="box">The box.</param>
    public CellRange Under(Box box) => new(Column(box.Left), Row(box.Top), Column(box.Right), Row(box.Bottom));

    /// <summary>How far to the left and to the right a straight piece comes within a row, a hair more so that rounding loses no cell.</summary>
    /// <param name="row">A row that it touches; the first and the last reach beyond the page.</param>
    /// <param name="fromX">One end.</param>
    /// <param name="fromY">One end, downward.</param>
    /// <param name="toX">The other end.</param>
    /// <param name="toY">The other end, downward.</param>
    public (double Left, double Right) WithinRow(int row, double fromX, double fromY, double toX, double toY)
    {
        const double Hair = 1e-6;
        var top = row == 0 ? double.NegativeInfinity : page.Top + (row * Side) - Hair;
        var bottom = row == rows - 1 ? double.PositiveInfinity : page.Top + ((row + 1) * Side) + Hair;
        var one = fromY >= top && fromY <= bottom ? fromX : XAt(Math.Clamp(fromY, top, bottom));
        var other = toY >= top && toY <= bottom ? toX : XAt(Math.Clamp(toY, top, bottom));
        return (Math.Min(one, other) - Hair, Math.Max(one, other) + Hair);

        double XAt(double y) => fromX + ((toX - fromX) * ((y - fromY) / (toY - fromY)));
    }

    private int Column(double x) => (int)Math.Clamp((x - page.Left) / Side, 0, columns - 1);

    private int Row(double y) => (int)Math.Clamp((y - page.Top) / Side, 0, rows - 1);
}
