using System.Numerics;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Tests.Composition;

/// <summary>
/// The smallest t for which one line passes within t × radius of three centres, worked out in another way than the one
/// under test. With v(pair) = (p − q)/(r + s), t is the least over unit vectors n of the largest |n·v|. The largest of
/// three such bends over a turn is least where two are equal, that is square to v ± w of some two pairs, or where one
/// is zero; so all nine directions are tried and the best is taken. No choice of a middle trunk is made.
/// </summary>
internal static class RodReference
{
    public static Rational SquareOfCloseness(TrunkSection a, TrunkSection b, TrunkSection c)
    {
        // Twice the distances over the sums of diameters, over a common denominator, so that all directions are whole numbers.
        TrunkSection[][] pairs = [[a, b], [b, c], [c, a]];
        var sums = pairs.Select(pair => (BigInteger)pair[0].Diameter.Nanometres + pair[1].Diameter.Nanometres).ToArray();
        var common = sums[0] * sums[1] * sums[2];
        var vectors = pairs.Select((pair, index) => (
            X: 2 * ((BigInteger)pair[0].Centre.X.Nanometres - pair[1].Centre.X.Nanometres) * (common / sums[index]),
            Y: 2 * ((BigInteger)pair[0].Centre.Y.Nanometres - pair[1].Centre.Y.Nanometres) * (common / sums[index]))).ToArray();

        var directions = new List<(BigInteger X, BigInteger Y)>();
        for (var one = 0; one < 3; one++)
        {
            directions.Add((vectors[one].X, vectors[one].Y));
            for (var other = one + 1; other < 3; other++)
            {
                directions.Add((vectors[one].X + vectors[other].X, vectors[one].Y + vectors[other].Y));
                directions.Add((vectors[one].X - vectors[other].X, vectors[one].Y - vectors[other].Y));
            }
        }

        Rational? least = null;
        foreach (var (x, y) in directions)
        {
            if (x.IsZero && y.IsZero)
            {
                continue;
            }

            // The normal of a line along (x, y) is (−y, x).
            var largest = vectors.Max(vector => BigInteger.Abs((vector.Y * x) - (vector.X * y)));
            var square = new Rational(largest * largest, ((x * x) + (y * y)) * common * common);
            least = least is { } known && known.CompareTo(square) <= 0 ? known : square;
        }

        return least ?? new Rational(0, 1);
    }

    public static double BySweep(TrunkSection a, TrunkSection b, TrunkSection c)
    {
        double Largest(double turn)
        {
            var (sine, cosine) = Math.SinCos(turn);
            double Share(TrunkSection one, TrunkSection other) => 2 * Math.Abs(
                (cosine * (one.Centre.X.Millimetres - other.Centre.X.Millimetres)) + (sine * (one.Centre.Y.Millimetres - other.Centre.Y.Millimetres)))
                / (one.Diameter.Millimetres + other.Diameter.Millimetres);
            return Math.Max(Share(a, b), Math.Max(Share(b, c), Share(c, a)));
        }

        const int steps = 20_000;
        var best = Enumerable.Range(0, steps).Select(step => Math.PI * step / steps).MinBy(Largest);
        for (var width = Math.PI / steps; width > 1e-13; width /= 2)
        {
            best = new[] { best - width, best - (width / 2), best, best + (width / 2), best + width }.MinBy(Largest);
        }

        return Largest(best);
    }
}
