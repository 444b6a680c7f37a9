using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>What can be measured of a line through three trunks.</summary>
public sealed record RodThroughThree
{
    private RodThroughThree()
    {
    }

    /// <summary>The smallest t for which one line passes within t × radius of all three centres.</summary>
    public required double Closeness { get; init; }

    /// <summary>How far the centre of the middle trunk stands off the straight line through the other two centres.</summary>
    public required Length Offset { get; init; }

    /// <summary>On which side of that line it stands, square to it; where it stands on the line, either side will do and this is the one at the right of the way from end to end.</summary>
    public required Bearing Side { get; init; }

    /// <summary>The three trunks from one end to the other.</summary>
    private ImmutableArray<TrunkSection> Sections { get; init; }

    /// <summary>The direction, square to the line, in which a trunk leaves it soonest.</summary>
    /// <param name="position">Which trunk along the way: 0 or 2 for an end, 1 for the middle.</param>
    /// <returns>The middle trunk's own side; for an end the other side.</returns>
    public Bearing WayOut(int position) => position == 1 ? Side : Side.Opposite;

    /// <summary>How far one trunk has to move on its <see cref="WayOut"/> before the closeness is above a limit.</summary>
    /// <param name="position">Which trunk along the way: 0 or 2 for an end, 1 for the middle.</param>
    /// <param name="limit">The limit, a bare ratio above zero.</param>
    /// <returns>The distance, found to a thousandth of a millimetre; zero when the closeness is above the limit already.</returns>
    public Length MoveToClear(int position, double limit)
    {
        double least = 0, most = 1;
        if (ClosenessAfter(position, Length.Zero) > limit)
        {
            return Length.Zero;
        }

        // The closeness cannot stay within any limit when a trunk goes on square to the line through the others, unless all have no width.
        while (most < Length.Largest.Millimetres && ClosenessAfter(position, Length.FromMillimetres(most)) <= limit)
        {
            least = most;
            most *= 2;
        }

        while (most - least > 0.001)
        {
            var middle = (least + most) / 2;
            (least, most) = ClosenessAfter(position, Length.FromMillimetres(middle)) <= limit ? (middle, most) : (least, middle);
        }

        return Length.FromMillimetres(most);
    }

    private double ClosenessAfter(int position, Length move)
    {
        var way = WayOut(position);
        var moved = Sections[position] with
        {
            Centre = new(Sections[position].Centre.X + (move * way.Rightward), Sections[position].Centre.Y + (move * way.Backward)),
        };
        return position switch
        {
            0 => Rod.Closeness(moved, Sections[1], Sections[2]),
            1 => Rod.Closeness(Sections[0], moved, Sections[2]),
            _ => Rod.Closeness(Sections[0], Sections[1], moved),
        };
    }

    /// <summary>Measures three trunks.</summary>
    /// <param name="from">The trunk at one end.</param>
    /// <param name="middle">The trunk in the middle.</param>
    /// <param name="to">The trunk at the other end.</param>
    /// <returns>What can be measured; the offset is zero when the ends stand at one place.</returns>
    public static RodThroughThree Of(in TrunkSection from, in TrunkSection middle, in TrunkSection to)
    {
        var cross = Rod.Cross(from.Centre, middle.Centre, to.Centre);
        var length = Math.Sqrt((double)Rod.Square(from.Centre, to.Centre));
        double ux = to.Centre.X.Nanometres - from.Centre.X.Nanometres, uy = to.Centre.Y.Nanometres - from.Centre.Y.Nanometres;
        return new()
        {
            Closeness = Rod.Closeness(from, middle, to),
            Offset = new(length > 0 ? (long)Math.Round((double)Int128.Abs(cross) / length) : 0),

            // Seen along the way from end to end, a turn to the left (anticlockwise, cross below zero for the middle) is at the left.
            Side = cross < 0 ? Bearing.Of(-uy, ux) : Bearing.Of(uy, -ux),
            Sections = [from, middle, to],
        };
    }
}
