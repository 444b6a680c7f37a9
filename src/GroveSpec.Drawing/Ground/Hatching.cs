namespace GroveSpec.Drawing.Ground;

/// <summary>Slanting lines within an outline, so that an area reads without a tint.</summary>
internal static class Hatching
{
    /// <summary>The lines, from the lower left to the upper right.</summary>
    /// <param name="rings">The closed lines of the outline on the page; a place is within where an odd number of them lies to a side of it.</param>
    /// <param name="apart">How far the lines lie apart in pixels; with more than some thousand they lie wider.</param>
    /// <returns>The pieces of the lines.</returns>
    public static IEnumerable<((double X, double Y) From, (double X, double Y) To)> Of((double X, double Y)[][] rings, double apart)
    {
        // In a frame turned by an eighth each line has one height, across = (x + y) / √2.
        var half = Math.Sqrt(0.5);
        var least = rings.Min(ring => ring.Min(point => (point.X + point.Y) * half));
        var most = rings.Max(ring => ring.Max(point => (point.X + point.Y) * half));
        var step = Math.Max(apart, (most - least) / 1000);
        var crossings = new List<double>();
        for (var across = (Math.Floor(least / step) + 0.5) * step; across < most; across += step)
        {
            crossings.Clear();
            foreach (var ring in rings)
            {
                for (int index = 0, before = ring.Length - 1; index < ring.Length; before = index++)
                {
                    double a = (ring[before].X + ring[before].Y) * half, b = (ring[index].X + ring[index].Y) * half;
                    if (a > across != b > across)
                    {
                        double from = (ring[before].X - ring[before].Y) * half, to = (ring[index].X - ring[index].Y) * half;
                        crossings.Add(from + ((across - a) / (b - a) * (to - from)));
                    }
                }
            }

            crossings.Sort();
            for (var index = 1; index < crossings.Count; index += 2)
            {
                if (crossings[index] - crossings[index - 1] > 1.5)
                {
                    yield return (Back(crossings[index - 1], across), Back(crossings[index], across));
                }
            }
        }

        (double X, double Y) Back(double along, double across) => ((along + across) * half, (across - along) * half);
    }
}
