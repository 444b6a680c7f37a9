namespace GroveSpec.Drawing.Scene;

/// <summary>
/// Finds places for labels such that no two overlap and none leaves its page. Labels take turns, each the cheapest free place;
/// one that finds none may send another to its next best; then each looks once more whether something better has come free.
/// The same requests in the same order give the same places.
/// </summary>
internal sealed class LabelPlacer
{
    private const int Passes = 3;
    private const double MostForOptional = 60;
    private const double FarOff = 45;
    private readonly Box page;
    private readonly CellGrid grid;
    private readonly List<int>?[] labelsByCell;
    private readonly List<LabelRequest> requests = [];
    private int[] seen = [];
    private int look;
    private LabelPlacement?[] placed = [];
    private ObstacleCost[]?[] costs = [];

    /// <summary>Starts with an empty page.</summary>
    /// <param name="page">Where labels may stand.</param>
    public LabelPlacer(Box page)
    {
        this.page = page;
        grid = new CellGrid(page);
        labelsByCell = new List<int>?[grid.Count];
        Obstacles = new ObstacleMap(grid);
    }

    /// <summary>What labels keep off.</summary>
    public ObstacleMap Obstacles { get; }

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
        costs = new ObstacleCost[requests.Count][];
        seen = new int[requests.Count];
        var order = Enumerable.Range(0, requests.Count).OrderBy(label => requests[label].Turn).ToArray();
        foreach (var label in order)
        {
            if (!TryBest(label) && requests[label].IsRequired && !TryMoveOthers(label))
            {
                TryFarOff(label, double.PositiveInfinity);
            }
        }

        // A round in which nothing moved would only be repeated by the next.
        var hasMoved = true;
        for (var pass = 0; pass < Passes && hasMoved; pass++)
        {
            hasMoved = false;
            foreach (var label in order)
            {
                if (placed[label] is { } place)
                {
                    Lift(label);
                    if (!TryBest(label))
                    {
                        Put(label, place);
                    }

                    hasMoved |= placed[label] != place;
                }
                else if (pass == 0)
                {
                    hasMoved |= TryBest(label);
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

            var cost = candidate.Cost + CostOf(label, i, box, Math.Min(bestCost, request.IsRequired ? double.PositiveInfinity : MostForOptional));
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

    // Obstacles stay where they are, so what a place costs is found once, however often its label looks again.
    private double CostOf(int label, int candidate, Box box, double bound)
    {
        var known = costs[label] ??= new ObstacleCost[requests[label].Candidates.Count];
        if (!known[candidate].Answers(bound))
        {
            known[candidate] = Obstacles.CostOf(box, bound);
        }

        return known[candidate].Least;
    }

    private bool TryMoveOthers(int label)
    {
        var request = requests[label];
        for (var i = 0; i < request.Candidates.Count; i++)
        {
            var box = BoxOf(request, request.Candidates[i]);
            if (!page.Holds(box) || double.IsPositiveInfinity(CostOf(label, i, box, double.PositiveInfinity)))
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

                var cost = FarOff + (distance * 0.25) + Obstacles.CostOf(box, bestCost).Least;
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
        var cells = grid.Under(box);
        for (var row = cells.FirstRow; row <= cells.LastRow; row++)
        {
            for (var column = cells.FirstColumn; column <= cells.LastColumn; column++)
            {
                if (labelsByCell[grid.Cell(column, row)] is { } inCell)
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
        var cells = grid.Under(box);
        for (var row = cells.FirstRow; row <= cells.LastRow; row++)
        {
            for (var column = cells.FirstColumn; column <= cells.LastColumn; column++)
            {
                foreach (var label in labelsByCell[grid.Cell(column, row)] ?? [])
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

    private void Put(int label, LabelPlacement place)
    {
        placed[label] = place;
        var cells = grid.Under(place.Box);
        for (var row = cells.FirstRow; row <= cells.LastRow; row++)
        {
            for (var column = cells.FirstColumn; column <= cells.LastColumn; column++)
            {
                (labelsByCell[grid.Cell(column, row)] ??= []).Add(label);
            }
        }
    }

    private void Lift(int label)
    {
        var cells = grid.Under(placed[label]!.Value.Box);
        for (var row = cells.FirstRow; row <= cells.LastRow; row++)
        {
            for (var column = cells.FirstColumn; column <= cells.LastColumn; column++)
            {
                labelsByCell[grid.Cell(column, row)]!.Remove(label);
            }
        }

        placed[label] = null;
    }
}
