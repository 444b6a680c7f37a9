using System.Numerics;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Ground;

/// <summary>
/// What a newcomer makes together with two trunks, guessed in numbers of 53 bits and without a look at what else is told of
/// them, so that an edge of free ground is tested first where it is likely to be. What counts is measured elsewhere, exactly.
/// </summary>
public sealed class GroundGuess
{
    private readonly int newcomer;
    private readonly ViewFrame frame;
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] diameter;
    private readonly double[] breadth;
    private readonly bool reachesAnyDistance;
    private readonly (double Across, double Up)?[] tops;
    private readonly double[] across;
    private readonly SpacePoint? tip;
    private readonly double reachSquare;
    private readonly ViewStrips strips;

    /// <summary>Lays out what stands.</summary>
    /// <param name="trunks">The trunks in their order, all with a place, the newcomer's at the origin.</param>
    /// <param name="newcomer">Which of them it is.</param>
    /// <param name="frame">The eye.</param>
    /// <param name="reach">How far neighbours reach while the newcomer is not there.</param>
    /// <param name="gapPercent">The limit for even gaps in the view.</param>
    public GroundGuess(IReadOnlyList<TrunkState> trunks, int newcomer, ViewFrame frame, Length reach, double gapPercent)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        ArgumentNullException.ThrowIfNull(frame);
        (this.newcomer, this.frame) = (newcomer, frame);
        reachSquare = trunks.Count < StandingTrunks.ReachMattersFrom ? double.PositiveInfinity : reach.Millimetres * reach.Millimetres;
        x = Even(trunks.Select(trunk => trunk.Place!.Value.X.Millimetres));
        y = Even(trunks.Select(trunk => trunk.Place!.Value.Y.Millimetres));
        diameter = Even(trunks.Select(trunk => trunk.Diameter?.Value.Millimetres ?? 0));
        breadth = [.. diameter.Select(across => across * across)];
        reachesAnyDistance = trunks.Count < StandingTrunks.ReachMattersFrom;
        across = [.. trunks.Select(trunk => AcrossAt(trunk.Place!.Value))];
        tops = [.. trunks.Select(trunk => TrunkAxis.TipOf(trunk) is { } top ? TopAt(top) : null)];
        tip = TrunkAxis.TipOf(trunks[newcomer]);
        strips = new(across.Where((_, index) => index != newcomer), gapPercent);
    }

    /// <summary>Whether a straight rod passes three trunks, of which the middle one is a neighbour of both others.</summary>
    /// <param name="three">The trunks, as a set.</param>
    /// <param name="place">Where the newcomer stands.</param>
    /// <param name="limit">The largest closeness that counts, a bare ratio.</param>
    /// <returns>True when it seems to.</returns>
    public bool IsPassed(ulong three, PlanPoint place, double limit)
    {
        Set(place);
        var (one, two, last) = Three(three);
        double near = Square(one, two), far = Square(one, last), between = Square(two, last);
        var (first, middle, second) = near >= far && near >= between ? (one, last, two) : far >= between ? (one, two, last) : (two, one, last);
        double acrossX = x[second] - x[first], acrossY = y[second] - y[first], wayX = x[middle] - x[first], wayY = y[middle] - y[first];
        var twice = 2 * ((acrossX * wayY) - (acrossY * wayX));
        var most = Math.Max(Reach(first, middle, second), Math.Max(Reach(middle, second, first), Reach(second, first, middle)));
        return twice * twice <= limit * limit * most
            && (reachesAnyDistance || (AreNeighbours(middle, first, isOpen: false) && AreNeighbours(middle, second, isOpen: false)));
    }

    /// <summary>Whether two of the gaps between three trunks are even and open.</summary>
    /// <param name="three">The trunks, as a set.</param>
    /// <param name="place">Where the newcomer stands.</param>
    /// <param name="percent">The limit in percent of the longer gap.</param>
    /// <returns>True when they seem to be.</returns>
    public bool AreGapsEven(ulong three, PlanPoint place, double percent)
    {
        Set(place);
        var (one, two, last) = Three(three);
        return AreEven(one, two, last, percent) || AreEven(two, one, last, percent) || AreEven(last, one, two, percent);
    }

    /// <summary>Whether the gaps between three trunks are even in the view.</summary>
    /// <param name="three">The trunks, as a set, the newcomer among them.</param>
    /// <param name="place">Where the newcomer stands.</param>
    /// <param name="percent">The limit in percent of the longer gap.</param>
    /// <returns>True when they seem to be.</returns>
    public bool AreGapsEvenInView(ulong three, PlanPoint place, double percent)
    {
        var (one, other) = Others(three);
        double own = AcrossAt(place), first = across[one], second = across[other];
        double least = Math.Min(own, Math.Min(first, second)), most = Math.Max(own, Math.Max(first, second)), middle = own + first + second - least - most;
        double left = middle - least, right = most - middle;
        return Math.Abs(left - right) < percent / 100 * Math.Max(left, right);
    }

    /// <summary>Whether the tops of three trunks lie on one line in the view.</summary>
    /// <param name="three">The trunks, as a set, the newcomer among them.</param>
    /// <param name="place">Where the newcomer stands.</param>
    /// <param name="percent">The limit in percent of the line.</param>
    /// <returns>True when they seem to.</returns>
    public bool AreLevel(ulong three, PlanPoint place, double percent)
    {
        var (one, other) = Others(three);
        if (tip is not { } top || TopAt(new(top.X + place.X, top.Y + place.Y, top.Z)) is not { } own || tops[one] is not { } first || tops[other] is not { } second)
        {
            return false;
        }

        Span<(double Across, double Up)> row = [own, first, second];
        row.Sort((left, right) => left.Across.CompareTo(right.Across));
        double ux = row[2].Across - row[0].Across, uy = row[2].Up - row[0].Up, vx = row[1].Across - row[0].Across, vy = row[1].Up - row[0].Up;
        return 100 * Math.Abs((ux * vy) - (uy * vx)) <= percent * ((ux * ux) + (uy * uy));
    }

    /// <summary>Places between two at which the newcomer's foot is in a strip of even gaps in the view that is narrower than they are apart, and such beside it.</summary>
    /// <param name="from">A place.</param>
    /// <param name="to">Another.</param>
    /// <returns>The places, the nearest to <paramref name="from"/> first.</returns>
    public IReadOnlyList<PlanPoint> StripsBetween(PlanPoint from, PlanPoint to) =>
        strips.Between(AcrossAt(from), AcrossAt(to)) is { Count: > 0 } shares ? [.. shares.Select(share => GroundOutline.Between(from, to, share))] : [];

    /// <summary>Whether the bark of the newcomer and of another meet.</summary>
    /// <param name="two">Both, as a set.</param>
    /// <param name="place">Where the newcomer stands.</param>
    /// <returns>True when they seem to.</returns>
    public bool DoTouch(ulong two, PlanPoint place)
    {
        Set(place);
        var other = BitOperations.TrailingZeroCount(two & ~(1UL << newcomer));
        var reach = diameter[newcomer] + diameter[other];
        return 4 * Square(newcomer, other) <= reach * reach;
    }

    /// <summary>An even number of places, as <see cref="PlanPairs"/> has it.</summary>
    private static double[] Even(IEnumerable<double> values)
    {
        double[] known = [.. values];
        return known.Length % 2 == 0 ? known : [.. known, double.NaN];
    }

    private void Set(PlanPoint place) => (x[newcomer], y[newcomer]) = (place.X.Millimetres, place.Y.Millimetres);

    private bool AreEven(int trunk, int one, int other, double percent)
    {
        double toOne = Square(trunk, one), toOther = Square(trunk, other), rest = 1 - (percent / 100);
        return Math.Min(toOne, toOther) > Math.Max(toOne, toOther) * rest * rest && AreNeighbours(trunk, one, isOpen: true) && AreNeighbours(trunk, other, isOpen: true);
    }

    /// <summary>Whether two seem to be neighbours, and where that is asked for, with an open gap between them.</summary>
    private bool AreNeighbours(int from, int to, bool isOpen)
    {
        var square = Square(from, to);
        return square <= reachSquare && PlanPairs.Between(x, y, breadth, from, to, square) is (0, var entering) && (!isOpen || entering == 0);
    }

    private static (int One, int Two, int Last) Three(ulong three)
    {
        var rest = three & (three - 1);
        return (BitOperations.TrailingZeroCount(three), BitOperations.TrailingZeroCount(rest), BitOperations.Log2(three));
    }

    private (int One, int Other) Others(ulong three)
    {
        var rest = three & ~(1UL << newcomer);
        return (BitOperations.TrailingZeroCount(rest), BitOperations.TrailingZeroCount(rest & (rest - 1)));
    }

    private double Square(int one, int other)
    {
        double dx = x[one] - x[other], dy = y[one] - y[other];
        return (dx * dx) + (dy * dy);
    }

    private double Reach(int one, int middle, int other)
    {
        double difference = diameter[one] - diameter[other], both = diameter[one] + diameter[middle];
        double wide = (difference * (x[one] - x[middle])) - (both * (x[one] - x[other])), high = (difference * (y[one] - y[middle])) - (both * (y[one] - y[other]));
        return (wide * wide) + (high * high);
    }

    private double AcrossAt(PlanPoint place) => frame.See(new SpacePoint(place.X, place.Y, Length.Zero))?.Across.Millimetres ?? double.NaN;

    private (double Across, double Up)? TopAt(SpacePoint top) => frame.See(top) is { } seen ? (seen.Across.Millimetres, seen.Up.Millimetres) : null;
}
