namespace GroveSpec.Craft.Moving;

/// <summary>Whole steps about a place, the nearest first.</summary>
internal static class StepsOut
{
    private const int Kept = 24;

    /// <summary>The rings that nearly every search goes through, in order already.</summary>
    private static readonly (int Right, int Back)[][] FirstRings = [.. Enumerable.Range(1, Kept).Select(Ring)];

    /// <summary>All within a distance.</summary>
    /// <param name="farthest">The distance, in steps; the place itself is left out.</param>
    /// <returns>Steps to the right and to the back; of equally near ones by bearing from the back.</returns>
    public static IEnumerable<(int Right, int Back)> Within(int farthest)
    {
        // Ring by ring of one step's width, so that what is found near costs no sorting of what is far.
        for (var ring = 1; ring <= farthest; ring++)
        {
            foreach (var one in ring <= Kept ? FirstRings[ring - 1] : Ring(ring))
            {
                yield return one;
            }
        }
    }

    private static (int Right, int Back)[] Ring(int ring)
    {
        var found = new List<(int Square, double Bearing, int Right, int Back)>(8 * ring);
        for (var right = -ring; right <= ring; right++)
        {
            for (var back = -ring; back <= ring; back++)
            {
                var square = (right * right) + (back * back);
                if (square <= ring * ring && square > (ring - 1) * (ring - 1))
                {
                    var bearing = Math.Atan2(right, back);
                    found.Add((square, bearing < 0 ? bearing + (2 * Math.PI) : bearing, right, back));
                }
            }
        }

        found.Sort();
        return [.. found.Select(one => (one.Right, one.Back))];
    }
}
