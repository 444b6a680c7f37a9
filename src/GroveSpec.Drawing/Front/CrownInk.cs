using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Front;

/// <summary>The ink of a crown: its lobed edge, the branches in it, the masses within and the leaves, heavier below.</summary>
internal static class CrownInk
{
    /// <summary>The closed line round the leaves, lobe by lobe.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="crown">The crown.</param>
    /// <param name="coarseness">How large the lobes are, 1 for a planting of few trunks and more for many.</param>
    public static void Mass(Pen pen, CrownFigure crown, double coarseness)
    {
        var hand = Wobble.Of(crown.Trunk.Trunk.Name, "lobes");
        var usual = (crown.IsConifer ? Math.Clamp(crown.Radius * 0.17, 3, 9) : Math.Clamp(crown.Radius * 0.27, 4, 21)) * coarseness;
        var lobes = Walked(crown.Edge, ref hand, usual);
        pen.Move(lobes[0]);
        for (var lobe = 1; lobe <= lobes.Count; lobe++)
        {
            var (from, to) = (lobes[lobe - 1], lobes[lobe % lobes.Count]);
            pen.Lobe((to - from).Size * hand.Between(0.52, crown.IsConifer ? 0.8 : 0.64), to);
        }

        pen.Close();
    }

    /// <summary>Branches as slivers of ink that run out from the trunk into the leaves.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="crown">The crown.</param>
    public static void Branches(Pen pen, CrownFigure crown)
    {
        var hand = Wobble.Of(crown.Trunk.Trunk.Name, "branches");
        var trunk = crown.Trunk;
        var rise = trunk.Foot.Y - trunk.Tip.Y;
        var count = crown.IsConifer ? (int)Math.Clamp(crown.Height / 13, 5, 12) : (int)Math.Clamp(crown.Height / 24, 4, 9);
        var way = hand.Next() < 0.5 ? -1 : 1;
        var lowest = Math.Clamp((trunk.Foot.Y - crown.Foot) / rise, 0.1, 0.8);
        for (var branch = 0; branch < count; branch++)
        {
            var share = lowest + ((0.93 - lowest) * (branch + hand.Between(0.1, 0.7)) / count);
            var station = trunk.StationAt(share);
            var (start, half) = (trunk.On(station, 0), trunk.HalfAt(station));
            var up = 1 - ((share - lowest) / Math.Max(0.05, 1 - lowest));
            var reach = crown.Radius * (crown.IsConifer ? (0.15 + (0.5 * up)) : (0.42 + (0.3 * up))) * hand.Between(0.8, 1.1);
            var lift = crown.IsConifer
                ? reach * hand.Between(-0.28, -0.04)
                : reach * hand.Between(0.35, 0.85) * (1.25 - (0.4 * up));
            var end = new Spot(start.X + (way * reach), Math.Max(crown.Top + (crown.Height * 0.08), start.Y - lift));
            var (inLeft, inRight) = Across(crown, end.Y);
            if (inLeft < inRight)
            {
                var middle = (inLeft + inRight) / 2;
                end = end with { X = middle + Math.Clamp(end.X - middle, (inLeft - middle) * 0.86, (inRight - middle) * 0.86) };
            }

            reach = Math.Abs(end.X - start.X);
            if ((end.X - start.X) * way <= half)
            {
                way = -way;
                continue;
            }

            var bow = crown.IsConifer
                ? new Spot(start.X + (way * reach * 0.5), start.Y - (reach * 0.1))
                : new Spot(start.X + (way * reach * 0.55), start.Y - ((start.Y - end.Y) * 0.28));
            var thick = crown.IsConifer ? Math.Clamp(half * 0.16, 0.3, 0.9) : Math.Clamp(half * 0.26, 0.35, 2.2);
            pen.Move(start + new Spot(way * half * 0.5, -thick)).Bend(bow + new Spot(0, -thick * 0.55), end)
                .Bend(bow + new Spot(0, thick * 0.75), start + new Spot(way * half * 0.5, thick)).Close();
            way = -way;
        }
    }

    /// <summary>Short scalloped lines within, the undersides of the masses of leaf that look toward the viewer.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="crown">The crown.</param>
    /// <param name="fullness">How much texture, up to 1.</param>
    public static void Masses(Pen pen, CrownFigure crown, double fullness)
    {
        var hand = Wobble.Of(crown.Trunk.Trunk.Name, "masses");
        var count = (int)(Math.Clamp(crown.Radius * crown.Height / 900, 2, 9) * fullness);
        var place = hand.Next();
        for (var mass = 0; mass < count; mass++)
        {
            place = (place + 0.6180339887498949) % 1;
            var y = crown.Top + (crown.Height * (0.2 + (0.66 * ((mass + hand.Between(0.2, 0.8)) / count))));
            var (left, right) = Across(crown, y);
            var x = left + ((right - left) * (0.16 + (0.68 * place)));
            var wide = Math.Min((right - left) * 0.22, crown.Radius * hand.Between(0.25, 0.42));
            var step = Math.Clamp(crown.Radius * 0.16, 3, 12);
            var lobes = Math.Clamp((int)(wide / step), 2, 4);
            var at = new Spot(x - (wide / 2), y + hand.Between(0, 3));
            pen.Move(at);
            for (var lobe = 1; lobe <= lobes; lobe++)
            {
                var sag = wide * 0.16 * Math.Sin(Math.PI * lobe / lobes);
                var to = new Spot(x - (wide / 2) + (wide * lobe / lobes), y - sag + hand.Between(-1, 1));
                pen.Lobe((to - at).Size * hand.Between(0.55, 0.75), to);
                at = to;
            }
        }
    }

    /// <summary>Leaves: small bows for broad leaves, tufts for needles; few above and on the lit side, more below and in the shade.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="crown">The crown.</param>
    /// <param name="fullness">How much texture, up to 1.</param>
    public static void Leaves(Pen pen, CrownFigure crown, double fullness)
    {
        var hand = Wobble.Of(crown.Trunk.Trunk.Name, "leaves");
        var count = (int)(Math.Clamp(crown.Radius * crown.Height / (crown.IsConifer ? 120 : 110), 8, crown.IsConifer ? 75 : 110) * fullness);
        var size = Math.Clamp(crown.Radius * 0.05, 1.7, 4.2);
        var (low, side) = (hand.Next(), hand.Next());
        for (var leaf = 0; leaf < count; leaf++)
        {
            // The pair of steps of the plastic number fills a plane without rows.
            (low, side) = ((low + 0.7548776662466927) % 1, (side + 0.5698402909980532) % 1);
            var y = crown.Top + (crown.Height * (0.07 + (0.9 * Math.Pow(Math.Clamp(low + hand.Between(-0.05, 0.05), 0, 1), 0.62))));
            var (left, right) = Across(crown, y);
            var share = Math.Pow(Math.Clamp(side + hand.Between(-0.06, 0.06), 0, 1), 0.72);
            var at = new Spot(left + ((right - left) * (0.05 + (0.9 * share))), y);
            if (right - left < size * 3)
            {
                continue;
            }

            var grown = size * hand.Between(0.75, 1.3);
            if (crown.IsConifer)
            {
                var lean = hand.Between(-0.35, 0.35) + ((share - 0.5) * 0.9);
                Spot Needle(double angle) => at + new Spot(Math.Sin(lean + angle) * grown * 1.6, Math.Cos(lean + angle) * grown * 1.3);
                pen.Move(Needle(-0.55)).Line(at).Line(Needle(0.55));
                pen.Move(at).Line(Needle(0));
            }
            else
            {
                pen.Move(at).Bend(at + new Spot(grown * 0.8, -grown * hand.Between(0.7, 1.2)), at + new Spot(grown * 1.7, hand.Between(-0.6, 0.9)));
            }
        }
    }

    /// <summary>Points along the closed edge, a lobe apart; the last lobe is not a sliver.</summary>
    private static List<Spot> Walked(Spot[] edge, ref Wobble hand, double usual)
    {
        var round = 0.0;
        for (var index = 0; index < edge.Length; index++)
        {
            round += (edge[(index + 1) % edge.Length] - edge[index]).Size;
        }

        var points = new List<Spot>();
        var (corner, before) = (0, 0.0);
        for (var walked = 0.0; walked < round - (usual * 0.5); walked += usual * hand.Between(0.7, 1.35))
        {
            var piece = (edge[(corner + 1) % edge.Length] - edge[corner]).Size;
            while (before + piece < walked && corner < edge.Length - 1)
            {
                before += piece;
                corner++;
                piece = (edge[(corner + 1) % edge.Length] - edge[corner]).Size;
            }

            points.Add(edge[corner].Toward(edge[(corner + 1) % edge.Length], piece > 0 ? Math.Min(1, (walked - before) / piece) : 0));
        }

        return points;
    }

    private static (double Left, double Right) Across(CrownFigure crown, double y)
    {
        var (left, right) = (double.MaxValue, double.MinValue);
        for (var index = 0; index < crown.Edge.Length; index++)
        {
            var (from, to) = (crown.Edge[index], crown.Edge[(index + 1) % crown.Edge.Length]);
            if ((from.Y > y) != (to.Y > y))
            {
                var x = from.Toward(to, (y - from.Y) / (to.Y - from.Y)).X;
                (left, right) = (Math.Min(left, x), Math.Max(right, x));
            }
        }

        return left < right ? (left, right) : (0, 0);
    }
}
