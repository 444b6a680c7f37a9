using GroveSpec.Checks;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Plan;

/// <summary>
/// Which gaps a plan shows: those between standing trunks of which no third is nearer to both than they are to each other
/// (the relative neighbourhood graph, Toussaint 1980), and those that findings are about.
/// </summary>
internal static class GapLines
{
    /// <summary>From so many standing trunks on no gaps are shown but those of findings.</summary>
    public const int MostTrunks = 60;

    /// <summary>Finds them.</summary>
    /// <param name="trunks">The plan's trunks.</param>
    /// <param name="findings">What was noticed.</param>
    /// <returns>The gaps, sorted by the places of their trunks in the file.</returns>
    public static List<GapLine> Of(DrawnTrunk[] trunks, IEnumerable<Finding> findings)
    {
        var standing = trunks.Where(trunk => trunk.State.Presence == Presence.Standing).ToArray();
        var pairs = new SortedSet<(int From, int To)>();
        if (standing.Length <= MostTrunks)
        {
            AddNeighbours(standing, pairs);
        }

        var byName = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < standing.Length; i++)
        {
            byName.TryAdd(standing[i].Name, i);
        }

        foreach (var gap in findings.SelectMany(finding => finding.Figures).OfType<Figure.Gap>())
        {
            if (byName.TryGetValue(gap.From, out var from) && byName.TryGetValue(gap.To, out var to) && from != to)
            {
                pairs.Add((Math.Min(from, to), Math.Max(from, to)));
            }
        }

        return [.. pairs.Select(pair => Line(standing[pair.From], standing[pair.To]))];
    }

    private static GapLine Line(DrawnTrunk from, DrawnTrunk to) =>
        new() { From = from, To = to, Distance = from.State.Place!.Value.DistanceTo(to.State.Place!.Value) };

    private static void AddNeighbours(DrawnTrunk[] standing, SortedSet<(int From, int To)> pairs)
    {
        for (var i = 0; i < standing.Length; i++)
        {
            for (var j = i + 1; j < standing.Length; j++)
            {
                var apart = Square(standing[i], standing[j]);
                if (!Array.Exists(standing, third => Square(standing[i], third) < apart && Square(standing[j], third) < apart
                    && third != standing[i] && third != standing[j]))
                {
                    pairs.Add((i, j));
                }
            }
        }
    }

    private static double Square(DrawnTrunk one, DrawnTrunk other) =>
        ((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y));
}
