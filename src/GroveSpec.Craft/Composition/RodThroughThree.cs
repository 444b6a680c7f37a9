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

    /// <summary>Which of the three given trunks, from 0, stand at one end, in the middle and at the other end.</summary>
    public required ImmutableArray<int> Order { get; init; }

    /// <summary>How far the centre of the middle trunk stands off the straight line through the other two centres.</summary>
    public required Length Offset { get; init; }

    /// <summary>On which side of that line it stands, square to it; where it stands on the line, either side will do and this is the one at the right of the way from end to end.</summary>
    public required Bearing Side { get; init; }

    /// <summary>How far the middle trunk stands along the way from one end to the other: 0 at the first end, 1 at the other.</summary>
    public required double Along { get; init; }

    /// <summary>The offset at which the closeness would come to 1 if the middle trunk moved square to the line: the radius of the middle trunk and its share of those at the ends.</summary>
    public required Length OffsetAtOne { get; init; }

    /// <summary>How far the middle trunk has to move square to the line, further to its side, before the closeness passes a limit; a little short or long where the trunks are thick for their gaps.</summary>
    /// <param name="limit">The limit, a bare ratio.</param>
    /// <returns>The distance, not below zero.</returns>
    public Length MoveToClear(double limit)
    {
        var move = (OffsetAtOne * limit) - Offset;
        return move < Length.Zero ? Length.Zero : move;
    }

    internal static RodThroughThree Of(in TrunkSection from, in TrunkSection middle, in TrunkSection to, ImmutableArray<int> order)
    {
        var cross = Rod.Cross(from.Centre, middle.Centre, to.Centre);
        var length = Math.Sqrt((double)Rod.Square(from.Centre, to.Centre));
        double ux = to.Centre.X.Nanometres - from.Centre.X.Nanometres, uy = to.Centre.Y.Nanometres - from.Centre.Y.Nanometres;
        double vx = middle.Centre.X.Nanometres - from.Centre.X.Nanometres, vy = middle.Centre.Y.Nanometres - from.Centre.Y.Nanometres;
        var along = length > 0 ? Math.Clamp(((ux * vx) + (uy * vy)) / (length * length), 0, 1) : 0.5;
        var atOne = (middle.Diameter.Nanometres + ((1 - along) * from.Diameter.Nanometres) + (along * to.Diameter.Nanometres)) / 2;
        return new()
        {
            Closeness = Rod.Closeness(from, middle, to),
            Order = order,
            Offset = new(length > 0 ? (long)Math.Round((double)Int128.Abs(cross) / length) : 0),

            // Seen along the way from end to end, a turn to the left (anticlockwise, cross below zero for the middle) is at the left.
            Side = cross < 0 ? Bearing.Of(-uy, ux) : Bearing.Of(uy, -ux),
            Along = along,
            OffsetAtOne = new((long)Math.Round(atOne)),
        };
    }
}
