using System.Runtime.InteropServices;

namespace GroveSpec.Drawing.Scene;

/// <summary>What labels keep off, and what it costs to stand on it. The same obstacles in the same order give the same costs, to the last digit.</summary>
/// <param name="grid">The page's cells.</param>
internal sealed class ObstacleMap(CellGrid grid)
{
    private readonly List<int>?[] byCell = new List<int>?[grid.Count];
    private readonly List<Obstacle> obstacles = [];
    private int[] seen = [];
    private int look;

    /// <summary>Makes room for obstacles that are to come.</summary>
    /// <param name="count">How many at least.</param>
    public void Expect(int count) => obstacles.EnsureCapacity(obstacles.Count + count);

    /// <summary>Keeps labels off a box.</summary>
    /// <param name="box">The box.</param>
    /// <param name="cost">What it costs to stand on it; infinity where none may.</param>
    public void Avoid(Box box, double cost = double.PositiveInfinity) => Add(new Obstacle(0, box.Left, box.Top, box.Right, box.Bottom, cost), box);

    /// <summary>Keeps labels off a disc.</summary>
    /// <param name="x">Its middle.</param>
    /// <param name="y">Its middle, downward.</param>
    /// <param name="radius">Its radius.</param>
    /// <param name="cost">What it costs to stand on it wholly; standing on its edge costs less.</param>
    public void AvoidDisc(double x, double y, double radius, double cost) =>
        Add(new Obstacle(1, x, y, radius, 0, cost), new Box(x - radius, y - radius, x + radius, y + radius));

    /// <summary>Keeps labels off a straight line.</summary>
    /// <param name="fromX">One end.</param>
    /// <param name="fromY">One end, downward.</param>
    /// <param name="toX">The other end.</param>
    /// <param name="toY">The other end, downward.</param>
    /// <param name="cost">What it costs to cover a length of twenty pixels or more of it.</param>
    public void AvoidLine(double fromX, double fromY, double toX, double toY, double cost)
    {
        var obstacle = obstacles.Count;
        obstacles.Add(new Obstacle(2, fromX, fromY, toX, toY, cost));

        // Row by row, the cells between where the line comes into the row and where it leaves it.
        var extent = new Box(Math.Min(fromX, toX), Math.Min(fromY, toY), Math.Max(fromX, toX), Math.Max(fromY, toY));
        var cells = grid.Under(extent);
        for (var row = cells.FirstRow; row <= cells.LastRow; row++)
        {
            var (left, right) = grid.WithinRow(row, fromX, fromY, toX, toY);
            var inRow = grid.Under(extent with { Left = left, Right = right });
            for (var column = inRow.FirstColumn; column <= inRow.LastColumn; column++)
            {
                (byCell[grid.Cell(column, row)] ??= []).Add(obstacle);
            }
        }
    }

    /// <summary>What it costs to stand somewhere. Counting stops as soon as a bound is passed: among ten thousand trunks most places are hopeless at once.</summary>
    /// <param name="box">The place.</param>
    /// <param name="bound">The bound.</param>
    /// <returns>The cost, whole unless it is over the bound.</returns>
    public ObstacleCost CostOf(Box box, double bound)
    {
        if (seen.Length < obstacles.Count)
        {
            seen = new int[obstacles.Count];
        }

        double cost = 0;
        look++;
        var all = CollectionsMarshal.AsSpan(obstacles);
        var cells = grid.Under(box);
        for (var row = cells.FirstRow; row <= cells.LastRow; row++)
        {
            for (var column = cells.FirstColumn; column <= cells.LastColumn; column++)
            {
                foreach (var obstacle in CollectionsMarshal.AsSpan(byCell[grid.Cell(column, row)]))
                {
                    if (seen[obstacle] == look)
                    {
                        continue;
                    }

                    seen[obstacle] = look;
                    cost += all[obstacle].CostFor(box);
                    if (cost > bound)
                    {
                        return new ObstacleCost(cost, IsWhole: false);
                    }
                }
            }
        }

        return new ObstacleCost(cost, IsWhole: true);
    }

    private void Add(Obstacle obstacle, Box extent)
    {
        obstacles.Add(obstacle);
        var cells = grid.Under(extent);
        for (var row = cells.FirstRow; row <= cells.LastRow; row++)
        {
            for (var column = cells.FirstColumn; column <= cells.LastColumn; column++)
            {
                (byCell[grid.Cell(column, row)] ??= []).Add(obstacles.Count - 1);
            }
        }
    }

    private readonly record struct Obstacle(int Kind, double A, double B, double C, double D, double Cost)
    {
        public double CostFor(Box box)
        {
            switch (Kind)
            {
                case 0:
                    return new Box(A, B, C, D).Overlaps(box) ? Cost : 0;
                case 1:
                    var depth = box.DepthOfDisc(A, B, C);
                    return depth <= 0 ? 0 : Cost * Math.Min(1, 0.3 + (depth / 8));
                default:
                    var length = box.LengthInside(A, B, C, D);
                    return length <= 0 ? 0 : Cost * Math.Min(1, 0.2 + (length / 20));
            }
        }
    }
}
