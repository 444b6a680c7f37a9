namespace GroveSpec.Drawing.Scene;

/// <summary>
/// Finds places for labels such that no two overlap and none leaves its page. Labels take turns, each the cheapest free place;
/// one that finds none may send another to its next best; then each looks once more whether something better has come free.
/// The same requests in the same order give the same places.
/// </summary>
internal sealed class LabelPlacer
{
    private const double Cell = 32;
    private const int Passes = 3;
    private const double MostForOptional = 60;
    private const double FarOff = 45;
    private readonly Box page;
    private readonly int columns;
    private readonly int rows;
    private readonly List<int>[] obstaclesByCell;
    private readonly List<int>[] labelsByCell;
    private readonly List<Obstacle> obstacles = [];
    private readonly List<LabelRequest> requests = [];
    private int[] seen = [];
    private int look;
    private LabelPlacement?[] placed = [];

    /// <summary>Starts with an empty page.</summary>
    /// <param name="page">Where labels may stand.</param>
    public LabelPlacer(Box page)
    {
        this.page = page;
        columns = Math.Max(1, (int)Math.Ceiling(page.Width / Cell));
        rows = Math.Max(1, (int)Math.Ceiling(page.Height / Cell));
        obstaclesByCell = new List<int>[columns * rows];
        labelsByCell = new List<int>[columns * rows];
    }

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
        var length = Math.Sqrt(((toX - fromX) * (toX - fromX)) + ((toY - fromY) * (toY - fromY)));
        var steps = Math.Clamp((int)(length / (Cell / 2)), 1, 4096);
        var last = -1;
        for (var step = 0; step <= steps; step++)
        {
            var x = fromX + ((toX - fromX) * step / steps);
            var y = fromY + ((toY - fromY) * step / steps);

            // A cell's width on either side, since the samples may cut a corner.
            for (var side = -1; side <= 1; side++)
            {
                for (var level = -1; level <= 1; level++)
                {
                    var cell = CellAt(x + (side * Cell / 2), y + (level * Cell / 2));
                    if (cell != last)
                    {
                        var list = obstaclesByCell[cell] ??= [];
                        if (list.Count == 0 || list[^1] != obstacle)
                        {
                            list.Add(obstacle);
                        }

                        last = cell;
                    }
                }
            }
        }
    }

    /// <summary>Asks for a place.</summary>
    /// <param name="request">The label.</param>
    /// <returns>Its number, for finding it in what <see cref="Place"/> gives.</returns>
    public int Ask(LabelRequest request)
    {
        requests.Add(request);
        return requests.Count - 1;
    }

    /// <summary>Finds the places.</summary>
    /// <returns>One for each label asked for, null where it found none; a required one finds none only on a page without room.</returns>
    public LabelPlacement?[] Place()
    {
        placed = new LabelPlacement?[requests.Count];
        seen = new int[Math.Max(obstacles.Count, requests.Count)];
        var order = Enumerable.Range(0, requests.Count).OrderBy(label => requests[label].Turn).ToArray();
        foreach (var label in order)
        {
            if (!TryBest(label) && requests[label].IsRequired && !TryMoveOthers(label))
            {
                TryFarOff(label, double.PositiveInfinity);
            }
        }

        for (var pass = 0; pass < Passes && !order.All(label => placed[label] is { Candidate: 0 }); pass++)
        {
            foreach (var label in order)
            {
                if (placed[label] is { } place)
                {
                    Lift(label);
                    if (!TryBest(label))
                    {
                        Put(label, place);
                    }
                }
                else if (pass == 0)
                {
                    TryBest(label);
                }
            }
        }

        return placed;
    }

    private bool TryBest(int label)
    {
        var request = requests[label];
        var best = -1;
        var bestCost = double.PositiveInfinity;
        for (var i = 0; i < request.Candidates.Count; i++)
        {
            var candidate = request.Candidates[i];
            if (candidate.Cost >= bestCost)
            {
                continue;
            }

            var box = BoxOf(request, candidate);
            if (!page.Holds(box) || !IsFree(box))
            {
                continue;
            }

            var cost = candidate.Cost + CostOf(box, Math.Min(bestCost, request.IsRequired ? double.PositiveInfinity : MostForOptional));
            if (cost < bestCost)
            {
                (best, bestCost) = (i, cost);
            }
        }

        // A label that may be left out rather is than stand on something; one that may not, rather stands far off.
        if (!request.IsRequired && bestCost > MostForOptional)
        {
            return false;
        }

        if (request.IsRequired && bestCost > request.Bears && best >= 0 && TryFarOff(label, bestCost))
        {
            return true;
        }

        if (best < 0)
        {
            return false;
        }

        var chosen = request.Candidates[best];
        var chosenBox = BoxOf(request, chosen);
        Put(label, new LabelPlacement(chosenBox, NeedsLeader(request, chosenBox), best));
        return true;
    }

    private bool TryMoveOthers(int label)
    {
        var request = requests[label];
        for (var i = 0; i < request.Candidates.Count; i++)
        {
            var box = BoxOf(request, request.Candidates[i]);
            if (!page.Holds(box) || double.IsPositiveInfinity(CostOf(box, double.PositiveInfinity)))
            {
                continue;
            }

            var blockers = LabelsIn(box);
            if (blockers.Count is 0 or > 2)
            {
                continue;
            }

            var before = blockers.Select(blocker => placed[blocker]!.Value).ToArray();
            foreach (var blocker in blockers)
            {
                Lift(blocker);
            }

            Put(label, new LabelPlacement(box, NeedsLeader(request, box), i));
            if (blockers.TrueForAll(blocker => TryBest(blocker) || !requests[blocker].IsRequired))
            {
                return true;
            }

            foreach (var blocker in blockers.Where(blocker => placed[blocker] is not null))
            {
                Lift(blocker);
            }

            Lift(label);
            for (var b = 0; b < blockers.Count; b++)
            {
                Put(blockers[b], before[b]);
            }
        }

        return false;
    }

    // Wider and wider rings round what is named; the farther, the dearer, and so is a leader that crosses labels.
    private bool TryFarOff(int label, double bound)
    {
        var request = requests[label];
        var farthest = page.Width + page.Height;
        var bestCost = bound;
        Box? best = null;
        for (var distance = 14.0; distance < farthest && FarOff + (distance * 0.25) < bestCost; distance += 10)
        {
            for (var step = 0; step < 32; step++)
            {
                var candidate = LabelRequest.Beside(
                    request.AnchorX, request.AnchorY, request.Reach + distance, (-0.75 * Math.PI) + (step * Math.Tau / 32), request.Width, request.Height, 0);
                var box = BoxOf(request, candidate);
                if (!page.Holds(box) || !IsFree(box))
                {
                    continue;
                }

                var cost = FarOff + (distance * 0.25) + CostOf(box, bestCost);
                cost += cost < bestCost ? 30 * LabelsCrossed(label, request, box) : 0;
                if (cost < bestCost)
                {
                    (best, bestCost) = (box, cost);
                }
            }
        }

        if (best is not { } found)
        {
            return false;
        }

        Put(label, new LabelPlacement(found, NeedsLeader(request, found), -1));
        return true;
    }

    private int LabelsCrossed(int label, LabelRequest request, Box box)
    {
        var crossed = 0;
        for (var other = 0; other < placed.Length; other++)
        {
            if (other != label && placed[other] is { } place && place.Box.LengthInside(request.AnchorX, request.AnchorY, box.CentreX, box.CentreY) > 0)
            {
                crossed++;
            }
        }

        return crossed;
    }

    private static bool NeedsLeader(LabelRequest request, Box box) => box.DepthOfDisc(request.AnchorX, request.AnchorY, request.Reach + 11) <= 0;

    private static Box BoxOf(LabelRequest request, LabelCandidate candidate) => Box.About(candidate.CentreX, candidate.CentreY, request.Width, request.Height);

    private bool IsFree(Box box)
    {
        var (firstColumn, firstRow, lastColumn, lastRow) = Cells(box);
        for (var row = firstRow; row <= lastRow; row++)
        {
            for (var column = firstColumn; column <= lastColumn; column++)
            {
                if (labelsByCell[(row * columns) + column] is { } inCell)
                {
                    foreach (var label in inCell)
                    {
                        if (placed[label]!.Value.Box.Overlaps(box))
                        {
                            return false;
                        }
                    }
                }
            }
        }

        return true;
    }

    private List<int> LabelsIn(Box box)
    {
        look++;
        var found = new List<int>();
        var (firstColumn, firstRow, lastColumn, lastRow) = Cells(box);
        for (var row = firstRow; row <= lastRow; row++)
        {
            for (var column = firstColumn; column <= lastColumn; column++)
            {
                foreach (var label in labelsByCell[(row * columns) + column] ?? [])
                {
                    if (seen[label] != look)
                    {
                        seen[label] = look;
                        if (placed[label]!.Value.Box.Overlaps(box))
                        {
                            found.Add(label);
                        }
                    }
                }
            }
        }

        return found;
    }

    // Stops as soon as the bound is passed: among ten thousand trunks most places are hopeless at once.
    private double CostOf(Box box, double bound)
    {
        double cost = 0;
        look++;
        var (firstColumn, firstRow, lastColumn, lastRow) = Cells(box);
        for (var row = firstRow; row <= lastRow; row++)
        {
            for (var column = firstColumn; column <= lastColumn; column++)
            {
                if (obstaclesByCell[(row * columns) + column] is not { } inCell)
                {
                    continue;
                }

                foreach (var obstacle in inCell)
                {
                    if (seen[obstacle] == look)
                    {
                        continue;
                    }

                    seen[obstacle] = look;
                    cost += obstacles[obstacle].CostFor(box);
                    if (cost > bound)
                    {
                        return cost;
                    }
                }
            }
        }

        return cost;
    }

    private void Put(int label, LabelPlacement place)
    {
        placed[label] = place;
        var (firstColumn, firstRow, lastColumn, lastRow) = Cells(place.Box);
        for (var row = firstRow; row <= lastRow; row++)
        {
            for (var column = firstColumn; column <= lastColumn; column++)
            {
                (labelsByCell[(row * columns) + column] ??= []).Add(label);
            }
        }
    }

    private void Lift(int label)
    {
        var (firstColumn, firstRow, lastColumn, lastRow) = Cells(placed[label]!.Value.Box);
        for (var row = firstRow; row <= lastRow; row++)
        {
            for (var column = firstColumn; column <= lastColumn; column++)
            {
                labelsByCell[(row * columns) + column].Remove(label);
            }
        }

        placed[label] = null;
    }

    private void Add(Obstacle obstacle, Box extent)
    {
        obstacles.Add(obstacle);
        var (firstColumn, firstRow, lastColumn, lastRow) = Cells(extent);
        for (var row = firstRow; row <= lastRow; row++)
        {
            for (var column = firstColumn; column <= lastColumn; column++)
            {
                (obstaclesByCell[(row * columns) + column] ??= []).Add(obstacles.Count - 1);
            }
        }
    }

    private (int FirstColumn, int FirstRow, int LastColumn, int LastRow) Cells(Box box) =>
        (Column(box.Left), Row(box.Top), Column(box.Right), Row(box.Bottom));

    private int CellAt(double x, double y) => (Row(y) * columns) + Column(x);

    private int Column(double x) => (int)Math.Clamp((x - page.Left) / Cell, 0, columns - 1);

    private int Row(double y) => (int)Math.Clamp((y - page.Top) / Cell, 0, rows - 1);

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
