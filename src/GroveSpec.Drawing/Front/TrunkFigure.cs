using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Front;

/// <summary>One trunk on the page: its axis and its two edges, station by station from the soil to the tip.</summary>
internal sealed class TrunkFigure
{
    private TrunkFigure(TrunkState trunk, ShownSize size, Spot[] axis, Spot[] left, Spot[] right, double[] shares, double footScale, double crownScale, double dip)
    {
        Trunk = trunk;
        Size = size;
        Axis = axis;
        Left = left;
        Right = right;
        Shares = shares;
        FootScale = footScale;
        CrownScale = crownScale;
        Dip = dip;
    }

    public TrunkState Trunk { get; }

    public ShownSize Size { get; }

    public Spot[] Axis { get; }

    public Spot[] Left { get; }

    public Spot[] Right { get; }

    /// <summary>How far along the trunk each station lies, 0 at the soil.</summary>
    public double[] Shares { get; }

    /// <summary>Pixels of a millimetre where the trunk stands.</summary>
    public double FootScale { get; }

    /// <summary>Pixels of a millimetre where the crown is, at seven tenths of the trunk.</summary>
    public double CrownScale { get; }

    /// <summary>How far the near side of the base hangs below its centre, in px: the ground seen from above.</summary>
    public double Dip { get; }

    public Spot Foot => Axis[0];

    public Spot Tip => Axis[^1];

    public double FootHalf => (Right[0] - Left[0]).Size / 2;

    /// <summary>Half the trunk's thickness above the flare, in px.</summary>
    public double Thick => Size.Diameter.Millimetres * FootScale / 2;

    /// <summary>The lowest point of the base.</summary>
    public double Bottom => Math.Max(Foot.Y + Dip, Math.Max(Left[0].Y, Right[0].Y));

    /// <summary>Lays a trunk out.</summary>
    /// <param name="trunk">A trunk whose place is known.</param>
    /// <param name="size">The sizes to draw it with.</param>
    /// <param name="stage">Where the picture lies.</param>
    /// <param name="stations">How many stations, at least 4.</param>
    /// <returns>The figure; null when the eye does not see its base.</returns>
    public static TrunkFigure? Of(TrunkState trunk, ShownSize size, Stage stage, int stations)
    {
        var place = trunk.Place!.Value;
        var axis = trunk.Trunk.Line.Length > 0
            ? TrunkAxis.Through(place, trunk.Trunk.Line, size.Height)
            : TrunkAxis.Straight(place, size.Height, trunk.Trunk.Lean?.Value);
        if (stage.See(axis.Base) is not { } foot)
        {
            return null;
        }

        var curve = new AxisCurve(axis);
        var hand = Wobble.Of(trunk.Name, "trunk");
        var middle = new List<Spot>(stations);
        var shares = new List<double>(stations);
        var halves = new List<(double Left, double Right)>(stations);
        var (bow, snake) = (hand.Between(-0.3, 0.3), hand.Between(-0.22, 0.22));
        var (flareLeft, flareRight) = (hand.Between(0.75, 1.35), hand.Between(0.75, 1.35));
        var (phaseLeft, phaseRight) = (hand.Between(0, 6.28), hand.Between(0, 6.28));
        var diameter = size.Diameter.Millimetres;
        for (var station = 0; station < stations; station++)
        {
            var share = Math.Pow(station / (stations - 1.0), 1.55);
            if (stage.See(curve.At(share)) is not { } seen)
            {
                break;
            }

            // A hand's bow and snake, none at the soil and the tip, so that heights and gaps stay true.
            var sway = diameter * seen.Scale * ((bow * Math.Sin(Math.PI * share)) + (snake * Math.Sin(2 * Math.PI * share)));
            middle.Add(new Spot(seen.Spot.X + sway, seen.Spot.Y));
            shares.Add(share);
            var half = diameter / 2 * seen.Scale;
            var (thin, flare) = (Taper.Thinning(share), Taper.Flare(share * curve.RunMillimetres / diameter));
            halves.Add((
                half * ((thin * (1 + (0.06 * Math.Sin((share * 17) + phaseLeft)))) + (flare * flareLeft)),
                half * ((thin * (1 + (0.06 * Math.Sin((share * 15) + phaseRight)))) + (flare * flareRight))));
        }

        if (middle.Count < 2)
        {
            return null;
        }

        var (left, right) = (new Spot[middle.Count], new Spot[middle.Count]);
        for (var station = 0; station < middle.Count; station++)
        {
            var normal = Normal(middle, station);
            left[station] = middle[station] - (normal * halves[station].Left);
            right[station] = middle[station] + (normal * halves[station].Right);
        }

        var fall = Math.Abs(stage.Frame.EyeHeight.Millimetres) * foot.Scale / (stage.Scale * stage.Frame.Distance.Millimetres);
        var dip = Math.Clamp(fall, 0.12, 0.7) * (right[0] - left[0]).Size / 2;
        return new TrunkFigure(trunk, size, [.. middle], left, right, [.. shares], foot.Scale, stage.See(curve.At(0.7))?.Scale ?? foot.Scale, dip);
    }

    /// <summary>A point on the trunk's visible side.</summary>
    /// <param name="station">How far up, in stations; a fraction lies between two.</param>
    /// <param name="side">−1 at the left edge, 0 in the middle, 1 at the right edge.</param>
    /// <returns>The point.</returns>
    public Spot On(double station, double side)
    {
        var index = Math.Clamp((int)station, 0, Axis.Length - 2);
        var part = station - index;
        var edge = side < 0 ? Left : Right;
        return Axis[index].Toward(edge[index], Math.Abs(side)).Toward(Axis[index + 1].Toward(edge[index + 1], Math.Abs(side)), part);
    }

    /// <summary>The middle of the trunk at a share of its height.</summary>
    /// <param name="share">0 at the soil, 1 at the tip.</param>
    /// <returns>The point.</returns>
    public Spot Middle(double share) => On(StationAt(share), 0);

    /// <summary>The station, with its fraction, at a share of the trunk.</summary>
    /// <param name="share">0 at the soil, 1 at the tip.</param>
    /// <returns>The station.</returns>
    public double StationAt(double share)
    {
        var index = 0;
        while (index < Shares.Length - 2 && Shares[index + 1] < share)
        {
            index++;
        }

        return index + Math.Clamp((share - Shares[index]) / (Shares[index + 1] - Shares[index]), 0, 1);
    }

    /// <summary>Half the thickness at a station, in px.</summary>
    /// <param name="station">How far up, in stations.</param>
    /// <returns>The half width.</returns>
    public double HalfAt(double station) => (On(station, 1) - On(station, -1)).Size / 2;

    /// <summary>The middle of the trunk at a height of the page; beyond the ends, the end.</summary>
    /// <param name="y">The height on the page.</param>
    /// <returns>The x there.</returns>
    public double MiddleAcross(double y)
    {
        for (var index = 1; index < Axis.Length; index++)
        {
            if ((Axis[index - 1].Y >= y) != (Axis[index].Y >= y))
            {
                var part = (y - Axis[index - 1].Y) / (Axis[index].Y - Axis[index - 1].Y);
                return Axis[index - 1].Toward(Axis[index], part).X;
            }
        }

        return y > Foot.Y ? Foot.X : Tip.X;
    }

    private static Spot Normal(List<Spot> middle, int station)
    {
        var way = middle[Math.Min(middle.Count - 1, station + 1)] - middle[Math.Max(0, station - 1)];
        var size = way.Size;

        // At the soil the edges run level, however the trunk leans, since the cut is the ground itself.
        var normal = size > 1e-9 ? new Spot(-way.Y / size, way.X / size) : new Spot(1, 0);
        var upright = station == 0 ? 1 : station == 1 ? 0.6 : station == 2 ? 0.25 : 0;
        return normal.Toward(new Spot(1, 0), upright);
    }
}
