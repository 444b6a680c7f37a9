namespace GroveSpec.Craft.Composition;

/// <summary>
/// Places in the plan, sorted into halves of halves, to find those near a place. However the places lie, all at one
/// point included, building takes n log n steps and a question for k places about k + log n.
/// </summary>
internal sealed class PointTree
{
    private const int LeafSize = 8;

    private readonly double[] x;
    private readonly double[] y;
    private readonly int[] order;
    private readonly bool[] isSplitByX;

    /// <summary>Sorts places.</summary>
    /// <param name="xs">Their places to the right, whole numbers below 2^53 in any unit.</param>
    /// <param name="ys">Their places to the back, in the same unit.</param>
    public PointTree(double[] xs, double[] ys)
    {
        x = xs;
        y = ys;
        order = new int[xs.Length];
        isSplitByX = new bool[xs.Length];
        for (var index = 0; index < order.Length; index++)
        {
            order[index] = index;
        }

        Build(0, order.Length);
    }

    /// <summary>How many places were looked at so far, as a measure of the work done.</summary>
    public long Looked { get; private set; }

    /// <summary>Finds the nearest places to one of the places, itself left out.</summary>
    /// <param name="from">Which place.</param>
    /// <param name="reachSquare">The square of the distance up to which places count, in the square of the unit.</param>
    /// <param name="found">Takes the places found, nearest first; of places as near as each other, the one more to the left, then more to the front, comes first.</param>
    /// <param name="squares">Takes the squares of their distances; as long as <paramref name="found"/>, which sets how many are found at most.</param>
    /// <returns>How many were found.</returns>
    public int Nearest(int from, double reachSquare, Span<int> found, Span<double> squares)
    {
        var count = 0;
        Search(0, order.Length, from, reachSquare, found, squares, ref count);
        return count;
    }

    private void Build(int start, int end)
    {
        while (end - start > LeafSize)
        {
            var middle = Middle(start, end);
            isSplitByX[middle] = IsWide(start, end);
            Selection.Place(order, isSplitByX[middle] ? x : y, start, end, middle);
            Build(start, middle);
            start = middle + 1;
        }
    }

    private static int Middle(int start, int end) => start + ((end - start) / 2);

    private bool IsWide(int start, int end)
    {
        double left = double.MaxValue, right = double.MinValue, front = double.MaxValue, back = double.MinValue;
        for (var index = start; index < end; index++)
        {
            var place = order[index];
            left = Math.Min(left, x[place]);
            right = Math.Max(right, x[place]);
            front = Math.Min(front, y[place]);
            back = Math.Max(back, y[place]);
        }

        return right - left >= back - front;
    }

    private void Search(int start, int end, int from, double reachSquare, Span<int> found, Span<double> squares, ref int count)
    {
        if (end - start <= LeafSize)
        {
            for (var index = start; index < end; index++)
            {
                Offer(order[index], from, reachSquare, found, squares, ref count);
            }

            return;
        }

        var middle = Middle(start, end);
        var axis = isSplitByX[middle] ? x : y;
        var offset = axis[from] - axis[order[middle]];
        Offer(order[middle], from, reachSquare, found, squares, ref count);
        if (offset <= 0)
        {
            Search(start, middle, from, reachSquare, found, squares, ref count);
        }
        else
        {
            Search(middle + 1, end, from, reachSquare, found, squares, ref count);
        }

        // With the places full, one as far as the farthest of them brings nothing: so heaps of coincident places cost no more than others.
        var square = offset * offset;
        if (count < found.Length ? square > reachSquare : square >= squares[count - 1])
        {
            return;
        }

        if (offset <= 0)
        {
            Search(middle + 1, end, from, reachSquare, found, squares, ref count);
        }
        else
        {
            Search(start, middle, from, reachSquare, found, squares, ref count);
        }
    }

    private void Offer(int place, int from, double reachSquare, Span<int> found, Span<double> squares, ref int count)
    {
        Looked++;
        if (place == from)
        {
            return;
        }

        double dx = x[place] - x[from], dy = y[place] - y[from];
        var square = (dx * dx) + (dy * dy);
        if (square > reachSquare || (count == found.Length && !IsNearer(place, square, found[count - 1], squares[count - 1])))
        {
            return;
        }

        var slot = count < found.Length ? count++ : count - 1;
        while (slot > 0 && IsNearer(place, square, found[slot - 1], squares[slot - 1]))
        {
            found[slot] = found[slot - 1];
            squares[slot] = squares[slot - 1];
            slot--;
        }

        found[slot] = place;
        squares[slot] = square;
    }

    private bool IsNearer(int place, double square, int other, double otherSquare) =>
        square != otherSquare ? square < otherSquare
        : x[place] != x[other] ? x[place] < x[other]
        : y[place] != y[other] ? y[place] < y[other]
        : place < other;
}
