using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Moving;

/// <summary>
/// A stand whose trunks may be shifted about, asked very often what is amiss with it: the same as the checks of composition
/// measure, in numbers of 53 bits, so that only what lies at a limit to a part in a thousand million may be judged otherwise.
/// One stand serves one thread.
/// </summary>
public sealed partial class LooseStand
{
    /// <summary>Of more trunks than these none are shifted: sets of trunks are bits of a word.</summary>
    public const int MostTrunks = 64;

    private readonly StandFaultLimits limits;
    private readonly ContainerOutline? outline;
    private readonly bool isGrownTogether;
    private readonly double touchingReach;
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] diameter;
    private readonly double widest;
    private readonly ulong[] thicker;
    private readonly ulong[] alikeDiameters;
    private readonly ulong[] alikeHeights;
    private readonly double[] firstX;
    private readonly double[] firstY;
    private readonly double[] breadth;
    private readonly double[] room;
    private readonly double[] roomX;
    private readonly double[] roomY;
    private readonly double ampleRoom;
    private readonly double unlikeGap;
    private readonly ulong[] near;
    private readonly ulong[] open;
    private readonly double[] nearest;
    private readonly double[] ways;
    private readonly RestOfStand?[] rests;
    private readonly int largest;
    private readonly double centre;
    private readonly double width;
    private readonly List<(int Trunk, int Near, int Far, double Difference)> alike = [];
    private readonly List<ulong> touching = [];
    private readonly List<ulong> even = [];
    private double sum;
    private double most;
    private ICollection<StandFault>? into;
    private StandFault lastFault;
    private RestOfStand? rest;
    private int lastShifted;

    /// <summary>Lays out a stand.</summary>
    /// <param name="standing">The trunks, at most <see cref="MostTrunks"/>, in the order of the state.</param>
    /// <param name="state">The planting on the day, its trunks in the order of their names.</param>
    /// <param name="outline">The container's rim; null without one.</param>
    /// <param name="largest">The place of the largest trunk, which must not stand on the centre line; −1 where none counts as that.</param>
    /// <param name="isGrownTogether">Whether bark may meet since all stand on one root.</param>
    /// <param name="limits">What counts as amiss.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too many trunks.</exception>
    public LooseStand(StandingTrunks standing, PlantingState state, ContainerOutline? outline, int largest, bool isGrownTogether, StandFaultLimits limits)
    {
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(state);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(standing.Count, MostTrunks);
        (this.limits, this.outline, this.largest, this.isGrownTogether) = (limits, outline, largest, isGrownTogether);
        touchingReach = 1 + limits[StandFaultKind.Touching];
        Count = standing.Count;
        (x, y) = (PaddedWith(standing.Sections.Select(section => section.Centre.X.Millimetres)), PaddedWith(standing.Sections.Select(section => section.Centre.Y.Millimetres)));
        (firstX, firstY) = ([.. x], [.. y]);
        diameter = [.. standing.Sections.Select(section => section.Diameter.Millimetres)];
        isMeasured = [.. standing.Trunks.Select(trunk => trunk.Diameter is not null)];
        thicker = Thicker();
        alikeDiameters = Alike(StandFaultKind.TwinDiameters, diameter);
        alikeHeights = Alike(StandFaultKind.TwinHeights, [.. standing.Trunks.Select(trunk => trunk.Height?.Value.Millimetres ?? double.NaN)]);
        breadth = PaddedWith(diameter.Select(own => own * own));
        (nearest, room, ways, rests) = (new double[Padded], new double[Count], new double[Padded], new RestOfStand?[Count]);
        (near, open) = (new ulong[Count], new ulong[Count]);
        Array.Fill(room, double.NaN);
        (roomX, roomY) = ([.. x], [.. y]);
        ampleRoom = limits.IsOn(StandFaultKind.NearRim) ? Math.Max(0, limits[StandFaultKind.NearRim]) + 0.001 : 0.001;
        unlikeGap = 1 - (limits[StandFaultKind.EvenGaps] / 100);
        (across, depth, left, right, power) = (new double[Count], new double[Count], new double[Padded], new double[Padded], new double[Padded]);
        Array.Fill(left, double.NaN);
        Array.Fill(right, double.NaN);
        (starts, ends, widest) = (new double[Count], new double[Count], diameter.DefaultIfEmpty(0).Max());
        (topAcross, topUp, order) = (new double[Count], new double[Count], new int[Count]);
        (tipX, tipY, tipZ) = Tips(standing);
        (firstTipX, firstTipY, firstTipZ) = ([.. tipX], [.. tipY], [.. tipZ]);
        depthOrder = state.Planting.Viewed?.Depth;
        eye = ViewOf(state, out turnRight, out turnBack, out fixedDistance, out fixedReach, out tallest);
        if (outline is not null)
        {
            var (least, greatest) = outline.Reach(new Bearing((state.Planting.Viewed?.From ?? Bearing.Front).Degrees - 90));
            (centre, width) = ((least.Millimetres + greatest.Millimetres) / 2, greatest.Millimetres - least.Millimetres);
        }
    }

    /// <summary>How many trunks stand.</summary>
    public int Count { get; }

    /// <summary>Shifts a trunk with all of its run.</summary>
    /// <param name="trunk">Which one.</param>
    /// <param name="rightward">How far to the right of where it stood at first, in millimetres.</param>
    /// <param name="backward">How far to the back.</param>
    public void Shift(int trunk, double rightward, double backward)
    {
        x[trunk] = firstX[trunk] + rightward;
        y[trunk] = firstY[trunk] + backward;
        tipX[trunk] = firstTipX[trunk] + rightward;
        tipY[trunk] = firstTipY[trunk] + backward;
        (seenCovers, seenTops) = (seenCovers & ~(1UL << trunk), seenTops & ~(1UL << trunk));
        (lastShifted, rest) = (trunk, null);
    }

    /// <summary>Bends the tip of a trunk elsewhere, its foot left where it is.</summary>
    /// <param name="trunk">Which one.</param>
    /// <param name="rightward">How far to the right of where the tip was at first, in millimetres.</param>
    /// <param name="backward">How far to the back.</param>
    /// <param name="up">The tip above the soil.</param>
    public void Bend(int trunk, double rightward, double backward, double up)
    {
        tipX[trunk] = firstTipX[trunk] + rightward;
        tipY[trunk] = firstTipY[trunk] + backward;
        tipZ[trunk] = up;
        seenTops &= ~(1UL << trunk);
    }

    /// <summary>What is amiss, weighed.</summary>
    /// <param name="enough">Above this the exact sum is of no interest.</param>
    /// <param name="last">What was found last, with which it was enough; of no meaning when the sum is 0.</param>
    /// <returns>The sum of the weights, or any number above <paramref name="enough"/>.</returns>
    public double Weigh(double enough, out StandFault last)
    {
        (sum, most, into, lastFault) = (0, enough, null, default);
        Look();
        last = lastFault;
        return sum;
    }

    /// <summary>All that is amiss and weighs something.</summary>
    /// <param name="found">Takes it; emptied before.</param>
    /// <returns>The sum of the weights.</returns>
    public double Find(ICollection<StandFault> found)
    {
        ArgumentNullException.ThrowIfNull(found);
        found.Clear();
        (sum, most, into, lastFault) = (0, double.PositiveInfinity, found, default);
        Look();
        return sum;
    }

    /// <summary>What a fault weighs.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>Its weight; 0 where the file lets it stand.</returns>
    public double WeightOf(in StandFault fault) => limits.WeightOf(fault.Kind, fault.Trunks);

    /// <summary>Whether something that was amiss before still is, the neighbourhood looked at afresh.</summary>
    /// <param name="fault">What was found at other places of the trunks.</param>
    /// <returns>True when it still is.</returns>
    public bool Stands(in StandFault fault) => Holds(fault) && fault.Kind switch
    {
        StandFaultKind.ThreeInLine => Count < StandingTrunks.ReachMattersFrom ? IsMiddle(fault.Second, fault.First, fault.Third)
            : IsMiddle(fault.Second, fault.First, fault.Third) && AreNeighbours(fault.Second, fault.First) && AreNeighbours(fault.Second, fault.Third),
        StandFaultKind.EvenGaps => IsOpenGap(fault.First, fault.Second) && IsOpenGap(fault.First, fault.Third),
        StandFaultKind.EvenGapsInView => FollowEachOther(byTops: false, fault),
        StandFaultKind.LevelTops => FollowEachOther(byTops: true, fault),
        _ => true,
    };

    /// <summary>Whether the measure of a fault is within its limit, whoever else stands between; so it is mended when it is not.</summary>
    /// <param name="fault">What was found at other places of the trunks.</param>
    /// <returns>True while it is within.</returns>
    public bool Holds(in StandFault fault)
    {
        switch (fault.Kind)
        {
            case StandFaultKind.Touching:
                return Touch(fault.First, fault.Second);
            case StandFaultKind.OffContainer:
                return RoomOf(fault.First) < 0;
            case StandFaultKind.NearRim:
                return RoomOf(fault.First) < limits[StandFaultKind.NearRim];
            case StandFaultKind.CentredMain:
                return IsCentred();
            case StandFaultKind.EvenGaps:
                return AreAlike(SquareOf(fault.First, fault.Second), SquareOf(fault.First, fault.Third), out _);
            case StandFaultKind.ThreeInLine:
                return limits.IsOn(StandFaultKind.ThreeInLine) && PassesRod(fault.First, fault.Second, fault.Third);
            case StandFaultKind.TwinDiameters or StandFaultKind.TwinHeights:
                return AreNeighbours(fault.First, fault.Second);
            default:
                return HoldsInView(fault);
        }
    }

    /// <summary>The trunks of which one has to be shifted, so that a fault is mended.</summary>
    /// <param name="fault">What was found at the places where the trunks are now.</param>
    /// <returns>The trunks, as a set of bits.</returns>
    public ulong Concerned(in StandFault fault) => fault.Kind switch
    {
        StandFaultKind.DepthReversed => All,
        StandFaultKind.HiddenTrunk => fault.Trunks | CoveringOf(fault.First),
        StandFaultKind.TwinDiameters or StandFaultKind.TwinHeights => (1UL << fault.First) | (1UL << fault.Second),
        _ => fault.Trunks,
    };

    /// <summary>Looks for all that is amiss until it weighs enough. What others leave to contacts, covers and even gaps comes after them.</summary>
    private void Look()
    {
        MeasureNearest();
        touching.Clear();
        even.Clear();
        if (Contacts() && OfEachTrunk() && OfNeighbours())
        {
            See();
            _ = OfDepthAndCover() && InViewRow();
        }
    }

    /// <summary>Adds a fault.</summary>
    /// <returns>Whether to look on.</returns>
    private bool Add(StandFaultKind kind, ulong trunks, int first, int second = -1, int third = -1)
    {
        var weight = limits.WeightOf(kind, trunks);
        if (weight > 0)
        {
            var fault = new StandFault(kind, trunks, first, second, third);
            lastFault = fault;
            into?.Add(fault);
            sum += weight;
        }

        return sum <= most;
    }

    private bool OfNeighbours()
    {
        MeasureNeighbours();
        return EvenGaps() && Rods() && Twins(StandFaultKind.TwinDiameters, alikeDiameters) && Twins(StandFaultKind.TwinHeights, alikeHeights);
    }

    private bool OfEachTrunk()
    {
        for (var trunk = 0; trunk < Count && outline is not null; trunk++)
        {
            var left = RoomOf(trunk);
            var isLooked = left < 0
                ? !limits.IsOn(StandFaultKind.OffContainer) || Add(StandFaultKind.OffContainer, 1UL << trunk, trunk)
                : !(left < limits[StandFaultKind.NearRim]) || Add(StandFaultKind.NearRim, 1UL << trunk, trunk);
            if (!isLooked)
            {
                return false;
            }
        }

        return !IsCentred() || Add(StandFaultKind.CentredMain, 1UL << largest, largest);
    }

    private bool IsCentred()
    {
        if (outline is null || largest < 0 || Count < 2)
        {
            return false;
        }

        var place = (x[largest] * turnRight) + (y[largest] * turnBack);
        return 100 * Math.Abs(place - centre) <= limits[StandFaultKind.CentredMain] * width;
    }

    private double RoomOf(int trunk)
    {
        if (outline is null)
        {
            return double.PositiveInfinity;
        }

        // A step takes away no more room than it is long, so that far from the rim it need not be measured again.
        double dx = x[trunk] - roomX[trunk], dy = y[trunk] - roomY[trunk], way = Math.Sqrt((dx * dx) + (dy * dy));
        if (room[trunk] - way > ampleRoom)
        {
            return room[trunk] - way;
        }

        if (way > 0 || double.IsNaN(room[trunk]))
        {
            room[trunk] = outline.SignedDistanceInMillimetres(x[trunk], y[trunk]) - (diameter[trunk] / 2);
            (roomX[trunk], roomY[trunk]) = (x[trunk], y[trunk]);
        }

        return room[trunk];
    }
}
