using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace GroveSpec.Craft.Composition;

/// <summary>
/// Pairs of trunks as seen from above, two others looked at side by side. All arrays have an even number of places, and no
/// number where there is no trunk. Sums are made in one order only, so that a trunk is judged the same however it was met.
/// </summary>
internal static class PlanPairs
{
    /// <summary>The squares of the ways from a place to all trunks.</summary>
    /// <param name="x">The trunks' places to the right.</param>
    /// <param name="y">And to the back.</param>
    /// <param name="fromX">The place.</param>
    /// <param name="fromY">And to the back.</param>
    /// <param name="squares">Takes them.</param>
    public static void Squares(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double fromX, double fromY, Span<double> squares)
    {
        Vector128<double> hereX = Vector128.Create(fromX), hereY = Vector128.Create(fromY);
        for (var place = 0; place < x.Length; place += 2)
        {
            Square(Vector128.Create(x[place..]) - hereX, Vector128.Create(y[place..]) - hereY).CopyTo(squares[place..]);
        }
    }

    /// <summary>The least of some squares, two places left out.</summary>
    /// <param name="squares">The squares.</param>
    /// <param name="one">A place to leave out.</param>
    /// <param name="other">Another, or the same.</param>
    /// <returns>The least; without a limit when there is none.</returns>
    public static double Least(ReadOnlySpan<double> squares, int one, int other)
    {
        var least = double.PositiveInfinity;
        for (var place = 0; place < squares.Length; place++)
        {
            least = squares[place] < least && place != one && place != other ? squares[place] : least;
        }

        return least;
    }

    /// <summary>The shorter of two ways to each place.</summary>
    /// <param name="one">The squares of some ways.</param>
    /// <param name="other">Those of others.</param>
    /// <param name="nearer">Takes the lesser of each two.</param>
    /// <returns>The least of <paramref name="other"/>.</returns>
    public static double Nearer(ReadOnlySpan<double> one, ReadOnlySpan<double> other, Span<double> nearer)
    {
        var least = Vector128.Create(double.PositiveInfinity);
        for (var place = 0; place < other.Length; place += 2)
        {
            Vector128<double> first = Vector128.Create(one[place..]), second = Vector128.Create(other[place..]);
            Vector128.ConditionalSelect(Vector128.LessThan(second, first), second, first).CopyTo(nearer[place..]);
            least = Vector128.ConditionalSelect(Vector128.LessThan(second, least), second, least);
        }

        return Math.Min(least[0], least[1]);
    }

    /// <summary>The places at which one square is less than another.</summary>
    /// <param name="one">Some squares.</param>
    /// <param name="other">As many others.</param>
    /// <returns>The places, as a set of bits.</returns>
    public static ulong Shorter(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        var places = 0UL;
        for (var place = 0; place < one.Length; place += 2)
        {
            places |= (ulong)Vector128.LessThan(Vector128.Create(one[place..]), Vector128.Create(other[place..])).ExtractMostSignificantBits() << place;
        }

        return places;
    }

    /// <summary>The places of squares that are less than one.</summary>
    /// <param name="squares">The squares.</param>
    /// <param name="part">The one.</param>
    /// <returns>The places, as a set of bits.</returns>
    public static ulong Below(ReadOnlySpan<double> squares, double part)
    {
        var limit = Vector128.Create(part);
        var places = 0UL;
        for (var place = 0; place < squares.Length; place += 2)
        {
            places |= (ulong)Vector128.LessThan(Vector128.Create(squares[place..]), limit).ExtractMostSignificantBits() << place;
        }

        return places;
    }

    /// <summary>The places of squares that are no more than one.</summary>
    /// <param name="squares">The squares.</param>
    /// <param name="most">The one.</param>
    /// <returns>The places, as a set of bits.</returns>
    public static ulong AtMost(ReadOnlySpan<double> squares, double most)
    {
        var limit = Vector128.Create(most);
        var places = 0UL;
        for (var place = 0; place < squares.Length; place += 2)
        {
            places |= (ulong)Vector128.LessThanOrEqual(Vector128.Create(squares[place..]), limit).ExtractMostSignificantBits() << place;
        }

        return places;
    }

    /// <summary>The trunks between two: those that part them, their bark over the line between the centres, and those that enter the circle over their gap.</summary>
    /// <param name="x">The trunks' places to the right.</param>
    /// <param name="y">And to the back.</param>
    /// <param name="breadth">The squares of their diameters.</param>
    /// <param name="from">One of the two.</param>
    /// <param name="to">The other.</param>
    /// <param name="between">The square of the way between them.</param>
    /// <returns>Two sets of bits; neither holds one of the two.</returns>
    public static (ulong Parting, ulong Entering) Between(ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> breadth, int from, int to, double between)
    {
        Vector128<double> fromX = Vector128.Create(x[from]), fromY = Vector128.Create(y[from]), toX = Vector128.Create(x[to]), toY = Vector128.Create(y[to]);
        Vector128<double> wayX = toX - fromX, wayY = toY - fromY, gap = Vector128.Create(between);
        ulong parting = 0, entering = 0;
        for (var place = 0; place < x.Length; place += 2)
        {
            Vector128<double> hereX = Vector128.Create(x[place..]), hereY = Vector128.Create(y[place..]);
            Vector128<double> ownX = hereX - fromX, ownY = hereY - fromY, otherX = hereX - toX, otherY = hereY - toY;

            // Only one nearer to each than they are to each other can stand between.
            var isNear = Vector128.LessThan(Square(ownX, ownY), gap) & Vector128.LessThan(Square(otherX, otherY), gap);
            if (isNear != Vector128<double>.Zero)
            {
                var isParting = isNear & IsParting(wayX, wayY, ownX, ownY, otherX, otherY, Vector128.Create(breadth[place..]) * gap);
                parting |= (ulong)isParting.ExtractMostSignificantBits() << place;
                entering |= (ulong)(isNear & IsEntering(ownX, ownY, otherX, otherY)).ExtractMostSignificantBits() << place;
            }
        }

        return (parting, entering);
    }

    /// <summary>The trunks from which another parts one, or whose gap to it is entered by that other.</summary>
    /// <param name="x">The trunks' places to the right.</param>
    /// <param name="y">And to the back.</param>
    /// <param name="breadth">The square of the diameter of the one between.</param>
    /// <param name="from">The one.</param>
    /// <param name="middle">The one between.</param>
    /// <returns>Two sets of bits, only of trunks with higher numbers than <paramref name="from"/>; the one between is in neither.</returns>
    public static (ulong Parted, ulong Entered) Beyond(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double breadth, int from, int middle)
    {
        Vector128<double> fromX = Vector128.Create(x[from]), fromY = Vector128.Create(y[from]), middleX = Vector128.Create(x[middle]), middleY = Vector128.Create(y[middle]);
        Vector128<double> ownX = middleX - fromX, ownY = middleY - fromY, own = Square(ownX, ownY), broad = Vector128.Create(breadth);
        ulong parted = 0, entered = 0;
        for (var place = (from + 1) & ~1; place < x.Length; place += 2)
        {
            Vector128<double> toX = Vector128.Create(x[place..]), toY = Vector128.Create(y[place..]);
            Vector128<double> wayX = toX - fromX, wayY = toY - fromY, otherX = middleX - toX, otherY = middleY - toY, gap = Square(wayX, wayY);
            var isNear = Vector128.LessThan(own, gap) & Vector128.LessThan(Square(otherX, otherY), gap);
            if (isNear != Vector128<double>.Zero)
            {
                parted |= (ulong)(isNear & IsParting(wayX, wayY, ownX, ownY, otherX, otherY, broad * gap)).ExtractMostSignificantBits() << place;
                entered |= (ulong)(isNear & IsEntering(ownX, ownY, otherX, otherY)).ExtractMostSignificantBits() << place;
            }
        }

        var above = ~((2UL << from) - 1);
        return (parted & above, entered & above);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> Square(Vector128<double> x, Vector128<double> y) => (x * x) + (y * y);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> IsParting(Vector128<double> wayX, Vector128<double> wayY, Vector128<double> ownX, Vector128<double> ownY, Vector128<double> otherX, Vector128<double> otherY, Vector128<double> broad)
    {
        var cross = (wayX * ownY) - (wayY * ownX);
        var twice = cross + cross;
        return Vector128.GreaterThan((ownX * wayX) + (ownY * wayY), Vector128<double>.Zero)
            & Vector128.LessThan((otherX * wayX) + (otherY * wayY), Vector128<double>.Zero)
            & Vector128.LessThanOrEqual(twice * twice, broad);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> IsEntering(Vector128<double> ownX, Vector128<double> ownY, Vector128<double> otherX, Vector128<double> otherY) =>
        Vector128.LessThan((ownX * otherX) + (ownY * otherY), Vector128<double>.Zero);
}
