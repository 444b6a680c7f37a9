using System.Globalization;
using System.Text;
using GroveSpec.Checks.Tests.Choosing;

namespace GroveSpec.Checks.Tests.Nudging;

/// <summary>Dense groups of 9 to 12 trunks made at random from a seed: each stands 32 to 55 mm from its nearest at planting, so that much is amiss at once.</summary>
internal static class Thicket
{
    /// <summary>A group.</summary>
    /// <param name="seed">Which one; of four that follow each other each has another number of trunks.</param>
    /// <returns>The text of its file.</returns>
    public static string Of(int seed)
    {
        var random = new Random(1000 + seed);
        var trunks = 9 + (seed % 4);
        var text = new StringBuilder($"planting \"Thicket {seed}\"\nhabit group\ncontainer oval 620 x 420 x 40 mm\n");
        text.AppendLine(CultureInfo.InvariantCulture, $"viewed from {random.Next(360)} deg, at 1500 mm, eye 250 mm");
        double[] diameters = [.. Enumerable.Range(0, trunks).Select(index => 8 + (index * 22.0 / trunks) + random.Next(2))];
        var feet = new List<(int X, int Y)>();
        while (feet.Count < trunks)
        {
            int x = random.Next(-150, 150), y = random.Next(-100, 100);
            if (feet.Count == 0 || feet.Min(foot => Math.Sqrt(((foot.X - x) * (foot.X - x)) + ((foot.Y - y) * (foot.Y - y)))) is >= 32 and <= 55)
            {
                feet.Add((x, y));
            }
        }

        for (var index = 0; index < trunks; index++)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"trunk {StoolSource.Name(index)} at {feet[index].X}, {feet[index].Y} mm diameter {diameters[index]:F0} mm height {140 + (index * 400 / trunks) + random.Next(20)} mm");
        }

        return text.ToString();
    }
}
