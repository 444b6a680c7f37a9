using System.Globalization;
using System.Text;

namespace GroveSpec.Benchmarks;

/// <summary>Plantings of any size, and graphs of as many circles at the same places, the same each time.</summary>
internal static class Inputs
{
    /// <summary>How far apart the trunks' places are before they are moved a little, in millimetres.</summary>
    private const int Spacing = 60;

    /// <summary>A planting.</summary>
    /// <param name="trunks">How many trunks it has.</param>
    /// <returns>Its text.</returns>
    public static string Planting(int trunks)
    {
        var side = Side(trunks) * Spacing;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"planting  \"{trunks} trunks\"\nhabit     group\nspecies   larix-kaempferi\n");
        text.Append(CultureInfo.InvariantCulture, $"container rectangle {side + 200} x {side + 200} x 40 mm\nviewed    from 180 deg, at {3 * side} mm, eye 300 mm\n\n");
        foreach (var (name, x, y, diameter) in Stand(trunks))
        {
            text.Append(CultureInfo.InvariantCulture, $"trunk {name}   at {x}, {y} mm   diameter {diameter} mm   height {diameter * 11 + (x & 15)} mm\n");
        }

        return text.ToString();
    }

    /// <summary>A planting of seven trunks, and the work of many years on it: wire with its look-overs and its end, pinching, pruning, feeding and repotting.</summary>
    /// <param name="tasks">How many tasks it has.</param>
    /// <param name="years">Over how many years they are spread.</param>
    /// <returns>Its text.</returns>
    public static string Work(int tasks, int years)
    {
        const int FirstYear = 2026;
        var text = new StringBuilder(Planting(7));
        text.Append("site latitude 51 N, zone 8b, last frost 3 May, first frost 1 November\n");
        for (var task = 0; task < tasks; task++)
        {
            var year = FirstYear + (task * years / tasks);
            var wire = task - (task % 7);
            text.Append(CultureInfo.InvariantCulture, $"task W{task} ");
            text.Append((task % 7) switch
            {
                0 => string.Create(CultureInfo.InvariantCulture, $"wire on T{task / 7 % 7} in late autumn {year} with aluminium 3 mm, coil 50 deg"),
                1 => string.Create(CultureInfo.InvariantCulture, $"look-over of W{wire} every 2 weeks until W{task + 1}"),
                2 => string.Create(CultureInfo.InvariantCulture, $"unwire of W{wire} 42 to 56 days after W{wire}"),
                3 => string.Create(CultureInfo.InvariantCulture, $"pinch on T{task / 7 % 7} every 3 weeks, from leaf-out {year} to midsummer {year}"),
                4 => string.Create(CultureInfo.InvariantCulture, $"prune on T{task / 7 % 7} in late winter {year}"),
                5 => string.Create(CultureInfo.InvariantCulture, $"feed on all from leaf-out {year} to leaf-colour {year}, after W{task - 1}"),
                _ => string.Create(CultureInfo.InvariantCulture, $"measure on all in late winter {year + 1}"),
            });
            text.Append('\n');
        }

        return text.ToString();
    }

    /// <summary>A graph with a circle for each trunk of <see cref="Planting"/>, at its place and as wide.</summary>
    /// <param name="trunks">How many.</param>
    /// <returns>Its text for graphviz: places in points, widths in inches.</returns>
    public static string Graph(int trunks)
    {
        const double PointsPerMillimetre = 72 / 25.4;
        var text = new StringBuilder("graph planting {\n  node [shape=circle, fixedsize=true]\n");
        foreach (var (name, x, y, diameter) in Stand(trunks))
        {
            text.Append(CultureInfo.InvariantCulture, $"  {name} [pos=\"{x * PointsPerMillimetre:0.##},{y * PointsPerMillimetre:0.##}\", width={diameter / 25.4:0.###}]\n");
        }

        return text.Append("}\n").ToString();
    }

    private static int Side(int trunks) => (int)Math.Ceiling(Math.Sqrt(trunks));

    private static IEnumerable<(string Name, int X, int Y, int Diameter)> Stand(int trunks)
    {
        var chance = new Random(trunks);
        var side = Side(trunks);
        for (var index = 0; index < trunks; index++)
        {
            var x = (((index % side) - (side / 2)) * Spacing) + chance.Next(-18, 19);
            var y = (((index / side) - (side / 2)) * Spacing) + chance.Next(-18, 19);
            yield return ($"T{index}", x, y, chance.Next(8, 24));
        }
    }
}
