using System.Globalization;
using System.Text;
using GroveSpec.Checks.Tests.Choosing;

namespace GroveSpec.Checks.Tests.Nudging;

/// <summary>Groups made at random from a seed: thick and tall go together, so that places are what is amiss.</summary>
internal static class Wood
{
    /// <summary>A group.</summary>
    /// <param name="seed">Which one.</param>
    /// <param name="trunks">How many trunks stand.</param>
    /// <returns>The text of its file.</returns>
    public static string Of(int seed, int trunks)
    {
        var random = new Random(seed);
        var text = new StringBuilder($"planting \"Wood {seed}\"\nhabit group\n");
        text.AppendLine(random.Next(2) == 0 ? "container oval 620 x 420 x 40 mm" : "container rectangle 600 x 400 x 40 mm");
        text.AppendLine(CultureInfo.InvariantCulture, $"viewed from {random.Next(360)} deg, at 1500 mm, eye 250 mm");
        for (var index = 0; index < trunks; index++)
        {
            int x = random.Next(-200, 200), y = random.Next(-110, 110);
            var diameter = 10 + (index * 40.0 / trunks) + random.Next(2);
            text.AppendLine(CultureInfo.InvariantCulture, $"trunk {StoolSource.Name(index)} at {x}, {y} mm diameter {diameter:F0} mm height {140 + (index * 400 / trunks) + random.Next(20)} mm");
        }

        return text.ToString();
    }
}
