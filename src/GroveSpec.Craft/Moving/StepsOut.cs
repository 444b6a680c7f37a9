namespace GroveSpec.Craft.Moving;

/// <summary>Whole steps about a place, the nearest first.</summary>
internal static class StepsOut
{
    private const int Kept = 120;

    /// <summary>The rings that searches go through again and again, each in order once the first has come to it; whoever comes at the same moment makes the same.</summary>
    private static readonly (int Right, int Back)[]?[] Rings = new (int, int)[]?[Kept];

    /// <summary>All within a distance.</summary>
    /// <param name="farthest">The distance, in steps; the place itself is left out.</param>
    /// <returns>Steps to the right and to the back; of equally near ones by bearing from the back.</returns>
    public static IEnumerable<(int Right, int Back)> Within(int farthest)
    {
        // Ring by ring of one step's width, so that what is found near costs no sorting of what is far.
        for (var ring = 1; ring <= farthest; ring++)
        {
            foreach (var one in ring <= Kept ? Rings[ring - 1] ??= Ring(ring) : Ring(ring))
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
            for (var back = Root((ring * ring) - (right * right)); back >= 0 && (right * right) + (back * back) > (ring - 1) * (ring - 1); back--)
            {
                Add(right, back);
                if (back > 0)
                {
                    Add(right, -back);
                }
            }
        }

        found.Sort();
        return [.. found.Select(one => (one.Right, one.Back))];

        static int Root(int square) => (int)Math.Sqrt(square);

        void Add(int right, int back)
        {
            var bearing = Math.Atan2(right, back);
            found.Add(((right * right) + (back * back), bearing < 0 ? bearing + (2 * Math.PI) : bearing, right, back));
        }
    }
}
