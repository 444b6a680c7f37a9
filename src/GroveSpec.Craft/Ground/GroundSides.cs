using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>
/// The sides of a lattice's squares, and what lies along them between two places of the lattice: free ground narrower than a
/// step between two things that take ground, and what takes ground as narrowly.
/// </summary>
/// <remarks>
/// A side between places that two different things take is looked along with guesses, for where the one ends and the other
/// begins; what lies between is tested. So are places along a side at which the test itself has something narrow begin.
/// </remarks>
internal sealed class GroundSides
{
    /// <summary>One side has fewer pieces than this.</summary>
    public const int MostPieces = 16;

    private const int MostHalvings = 6;
    private const int MostBetween = 3;
    private const int SidesAtOnce = 512;

    private readonly GroundLattice lattice;
    private readonly Dictionary<int, List<(PlanPoint Place, int Taker)>> between = [];

    private GroundSides(GroundLattice lattice) => this.lattice = lattice;

    /// <summary>Looks along all sides.</summary>
    /// <param name="lattice">The places.</param>
    /// <param name="tests">The test, once for each piece of work that may be done beside others.</param>
    /// <param name="sideBySide">Does so many pieces of work, each told its number from 0, at once or one after another.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>The sides.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static GroundSides Of(GroundLattice lattice, IReadOnlyList<IPlaceTest> tests, Action<int, Action<int>> sideBySide, CancellationToken cancellation)
    {
        var sides = new GroundSides(lattice);
        var parts = new List<(int Side, List<(PlanPoint, int)> Between)>[tests.Count];
        sideBySide(tests.Count, part =>
        {
            parts[part] = [];
            var found = new List<(PlanPoint Place, int Taker)>();
            for (var side = 0; side < sides.Count; side++)
            {
                if (side % SidesAtOnce == 0)
                {
                    cancellation.ThrowIfCancellationRequested();
                }

                if (side / SidesAtOnce % tests.Count == part && sides.MayChange(side) && sides.Along(side, tests[part], found) is { } places)
                {
                    parts[part].Add((side, places));
                }
            }
        });
        foreach (var (side, places) in parts.SelectMany(part => part))
        {
            sides.between.Add(side, places);
        }

        return sides;
    }

    private int Count => lattice.Columns * lattice.Rows * 2;

    /// <summary>The number of a side.</summary>
    /// <param name="column">The column of its place at the left and front.</param>
    /// <param name="row">The row of that.</param>
    /// <param name="isUpright">Whether it runs to the back, else to the right.</param>
    /// <returns>The number, from 0 on.</returns>
    public int NumberOf(int column, int row, bool isUpright) => (((row * lattice.Columns) + column) * 2) + (isUpright ? 1 : 0);

    /// <summary>The places along a side at which it changes whether the ground is free, between its ends.</summary>
    /// <param name="side">Its number.</param>
    /// <returns>The places with what takes each, 0 for free ones, from the end at the left or front on; null where there are none.</returns>
    public IReadOnlyList<(PlanPoint Place, int Taker)>? Between(int side) => between.GetValueOrDefault(side);

    /// <summary>The ends of a piece of a side.</summary>
    /// <param name="side">The side.</param>
    /// <param name="piece">The piece, from 0 at the left or front.</param>
    /// <returns>Both ends, with what takes each.</returns>
    public ((PlanPoint Place, int Taker) From, (PlanPoint Place, int Taker) To) Piece(int side, int piece)
    {
        var inner = between.GetValueOrDefault(side);
        var (from, to) = Ends(side);
        return (piece == 0 ? from : inner![piece - 1], inner is null || piece == inner.Count ? to : inner[piece]);
    }

    /// <summary>The crossings of free ground's edge with the sides: of each piece of a side of which one end is free and one is not.</summary>
    /// <returns>For each the side's number × <see cref="MostPieces"/> and the piece, in rising order.</returns>
    public IEnumerable<int> Crossings()
    {
        for (var side = 0; side < Count; side++)
        {
            for (var piece = 0; MayChange(side) && piece <= (between.GetValueOrDefault(side)?.Count ?? 0); piece++)
            {
                var (from, to) = Piece(side, piece);
                if (from.Taker == 0 != (to.Taker == 0))
                {
                    yield return (side * MostPieces) + piece;
                }
            }
        }
    }

    /// <summary>Whether it may change along a side whether the ground is free: not between two places that the same takes.</summary>
    private bool MayChange(int side)
    {
        var (column, row, otherColumn, otherRow) = Places(side);
        return otherColumn < lattice.Columns && otherRow < lattice.Rows && lattice.TakerOf(column, row) is var taker && (taker == 0 || taker != lattice.TakerOf(otherColumn, otherRow));
    }

    private ((PlanPoint Place, int Taker) From, (PlanPoint Place, int Taker) To) Ends(int side)
    {
        var (column, row, otherColumn, otherRow) = Places(side);
        return (End(column, row), End(otherColumn, otherRow));
    }

    /// <summary>The places of the lattice at a side's ends, the right or back one beyond the lattice for a side that is none.</summary>
    private (int Column, int Row, int OtherColumn, int OtherRow) Places(int side)
    {
        var (row, column) = Math.DivRem(side / 2, lattice.Columns);
        return (side & 1) == 0 ? (column, row, column + 1, row) : (column, row, column, row + 1);
    }

    private (PlanPoint Place, int Taker) End(int column, int row) => (lattice.PlaceOf(column, row), lattice.TakerOf(column, row));

    /// <summary>Looks along a side.</summary>
    /// <param name="side">The side.</param>
    /// <param name="test">The test.</param>
    /// <param name="found">Room to note places in; nothing in it is kept.</param>
    /// <returns>As <see cref="Between"/>.</returns>
    private List<(PlanPoint Place, int Taker)>? Along(int side, IPlaceTest test, List<(PlanPoint Place, int Taker)> found)
    {
        var (from, to) = Ends(side);
        if (from.Taker == GroundLattice.Beyond || to.Taker == GroundLattice.Beyond)
        {
            return null;
        }

        found.Clear();
        if (from.Taker > 0 && to.Taker > 0)
        {
            AddBetween(from, to, test, MostBetween, found);
        }
        else
        {
            var narrow = test.NarrowBetween(from.Place, to.Place);
            for (var index = 0; index < narrow.Count && index < MostPieces - 2; index++)
            {
                found.Add((narrow[index], test.TakerOf(narrow[index])));
            }
        }

        return Changes(from, found, to);
    }

    /// <summary>Adds what lies between two places that different things take, as far as it is neither of both.</summary>
    private static void AddBetween((PlanPoint Place, int Taker) from, (PlanPoint Place, int Taker) to, IPlaceTest test, int most, List<(PlanPoint Place, int Taker)> found)
    {
        if (most == 0)
        {
            return;
        }

        // What takes one end seems to take the other as well, so it takes what lies between unless the middle tells otherwise.
        if (test.IsLikelyTaken(from.Taker, to.Place) is true || test.IsLikelyTaken(to.Taker, from.Place) is true)
        {
            var middle = GroundOutline.Between(from.Place, to.Place, 0.5);
            if (test.IsLikelyTaken(from.Taker, middle) is false && test.IsLikelyTaken(to.Taker, middle) is false && test.IsFree(middle))
            {
                found.Add((middle, 0));
            }

            return;
        }

        var (isFirstKnown, isLastKnown) = (test.IsLikelyTaken(from.Taker, from.Place) is true, test.IsLikelyTaken(to.Taker, to.Place) is true);
        var after = isFirstKnown ? End(from, to.Place, test) : from.Place;
        if ((!isFirstKnown && !isLastKnown) || (isFirstKnown && test.IsLikelyTaken(to.Taker, after) is true))
        {
            return;
        }

        var before = isLastKnown ? End(to, after, test) : to.Place;
        var place = !isFirstKnown ? before : !isLastKnown ? after : GroundOutline.Between(after, before, 0.5);
        var taker = test.TakerOf(place);
        if (taker == 0)
        {
            found.Add((place, 0));
        }
        else if (taker != from.Taker && taker != to.Taker)
        {
            AddBetween(from, (place, taker), test, most - 1, found);
            found.Add((place, taker));
            AddBetween((place, taker), to, test, most - 1, found);
        }
    }

    /// <summary>The first place toward another that what takes a place is not likely to take.</summary>
    private static PlanPoint End((PlanPoint Place, int Taker) from, PlanPoint toward, IPlaceTest test)
    {
        var taken = from.Place;
        for (var halving = 0; halving < MostHalvings; halving++)
        {
            var middle = GroundOutline.Between(taken, toward, 0.5);
            (taken, toward) = test.IsLikelyTaken(from.Taker, middle) is true ? (middle, toward) : (taken, middle);
        }

        return toward;
    }

    /// <summary>Leaves the places at which it changes whether the ground is free.</summary>
    private static List<(PlanPoint Place, int Taker)>? Changes((PlanPoint Place, int Taker) from, List<(PlanPoint Place, int Taker)> found, (PlanPoint Place, int Taker) to)
    {
        List<(PlanPoint Place, int Taker)>? kept = null;
        var isFree = from.Taker == 0;
        foreach (var place in found)
        {
            if (place.Taker == 0 != isFree)
            {
                (kept ??= []).Add(place);
                isFree = !isFree;
            }
        }

        if (kept is not null && isFree == (to.Taker == 0))
        {
            kept.RemoveAt(kept.Count - 1);
        }

        return kept is { Count: > 0 } ? kept : null;
    }
}
