using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>Joins the crossings of free ground's edge with the sides of a lattice's squares to closed lines: marching squares, of which a side may be crossed more than once.</summary>
internal sealed class GroundRings
{
    private readonly GroundLattice lattice;
    private readonly GroundSides sides;
    private readonly IPlaceTest test;
    private readonly Func<int, int> takerAt;
    private readonly Dictionary<int, (int Crossing, int Square)> next = [];

    private GroundRings(GroundLattice lattice, GroundSides sides, IPlaceTest test, Func<int, int> takerAt) => (this.lattice, this.sides, this.test, this.takerAt) = (lattice, sides, test, takerAt);

    /// <summary>Joins them.</summary>
    /// <param name="lattice">Places of which it is known whether they are free.</param>
    /// <param name="sides">What lies between them.</param>
    /// <param name="tests">Tell of the middle of a square that is crossed more than twice: the same test, once for each piece of work that may be done beside others.</param>
    /// <param name="takerAt">What takes the ground beyond a crossing.</param>
    /// <param name="sideBySide">Does so many pieces of work, each told its number from 0, at once or one after another.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>The crossings of each closed line in their order, free ground at the left; each is its side's number × <see cref="GroundSides.MostPieces"/> and the piece of the side, with the square through which the line goes on to the next, row × columns and column. The lines come in the order in which they are met from the front.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static List<List<(int Crossing, int Square)>> Of(GroundLattice lattice, GroundSides sides, IReadOnlyList<IPlaceTest> tests, Func<int, int> takerAt, Action<int, Action<int>> sideBySide, CancellationToken cancellation)
    {
        GroundRings[] parts = [.. tests.Select(test => new GroundRings(lattice, sides, test, takerAt))];
        sideBySide(parts.Length, part =>
        {
            for (var row = 0; row < lattice.Rows - 1; row++)
            {
                cancellation.ThrowIfCancellationRequested();
                for (var column = 0; column < lattice.Columns - 1 && row / GroundLattice.RowsAtOnce % parts.Length == part; column++)
                {
                    parts[part].LinkSquare(column, row);
                }
            }
        });
        var next = parts.SelectMany(part => part.next).ToDictionary();
        var rings = new List<List<(int Crossing, int Square)>>();
        var isDone = new HashSet<int>();
        foreach (var start in next.Keys.Order())
        {
            var ring = new List<(int Crossing, int Square)>();
            for (var crossing = start; isDone.Add(crossing); crossing = next[crossing].Crossing)
            {
                ring.Add((crossing, next[crossing].Square));
            }

            if (ring.Count > 0)
            {
                rings.Add(ring);
            }
        }

        return rings;
    }

    /// <summary>Joins the crossings round a square: from one at which free ground is left, going round it anticlockwise, to one at which it is entered.</summary>
    private void LinkSquare(int column, int row)
    {
        Span<int> round = [sides.NumberOf(column, row, false), sides.NumberOf(column + 1, row, true), sides.NumberOf(column, row + 1, false), sides.NumberOf(column, row, true)];
        if (sides.Between(round[0]) is not null || sides.Between(round[1]) is not null || sides.Between(round[2]) is not null || sides.Between(round[3]) is not null)
        {
            LinkPieces(round, (row * lattice.Columns) + column);
            return;
        }

        Span<bool> free = [lattice.IsFree(column, row), lattice.IsFree(column + 1, row), lattice.IsFree(column + 1, row + 1), lattice.IsFree(column, row + 1)];
        if (free[0] == free[1] && free[1] == free[2] && free[2] == free[3])
        {
            return;
        }

        var isJoined = free[0] == free[2] && free[1] == free[3] && test.IsFree(GroundOutline.Between(lattice.PlaceOf(column, row), lattice.PlaceOf(column + 1, row + 1), 0.5));
        for (var corner = 0; corner < 4; corner++)
        {
            if (free[corner] && !free[(corner + 1) % 4])
            {
                // Where free ground is joined across the square, the line goes round the corner that is not free; else back round the free one.
                var way = isJoined ? 1 : 3;
                var other = (corner + way) % 4;
                while (free[other] || !free[(other + 1) % 4])
                {
                    other = (other + way) % 4;
                }

                next[round[corner] * GroundSides.MostPieces] = (round[other] * GroundSides.MostPieces, (row * lattice.Columns) + column);
            }
        }
    }

    /// <summary>As <see cref="LinkSquare"/>, of a square of which a side is crossed more than once: the line goes from where one run of places begins that are not free to the end of the run before it that is joined to it.</summary>
    private void LinkPieces(ReadOnlySpan<int> round, int square)
    {
        var places = new List<(PlanPoint Place, int Taker, int Crossing)>();
        for (var side = 0; side < 4; side++)
        {
            var (isForward, last) = (side < 2, sides.Between(round[side])?.Count ?? 0);
            for (var number = 0; number <= last; number++)
            {
                var piece = isForward ? number : last - number;
                var (from, to) = sides.Piece(round[side], piece);
                var (place, taker) = isForward ? from : to;
                places.Add((place, taker, (round[side] * GroundSides.MostPieces) + piece));
            }
        }

        var runs = new GroundRuns(places);
        var groups = runs.Groups(test, takerAt);
        for (var run = 0; run < groups.Length; run++)
        {
            next[runs.Start(run)] = (runs.End(GroundRuns.Before(groups, run)), square);
        }
    }
}
