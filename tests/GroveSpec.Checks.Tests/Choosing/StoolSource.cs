using System.Globalization;
using System.Text;

namespace GroveSpec.Checks.Tests.Choosing;

/// <summary>Stools made at random from a seed: all that a choice of trunks can depend on, now there and now not.</summary>
internal static class StoolSource
{
    /// <summary>A stool.</summary>
    /// <param name="seed">Which one.</param>
    /// <param name="trunks">How many trunks stand and have a place.</param>
    /// <returns>The text of its file.</returns>
    public static string Of(int seed, int trunks)
    {
        var random = new Random(seed);
        var text = new StringBuilder($"planting \"Stool {seed}\"\nhabit {Pick(random, "clump", "group", "group")}\n");
        text.AppendLine(Pick(random, "container oval 460 x 300 x 40 mm", "container rectangle 420 x 260 x 40 mm", "container slab (-230,-90) (-120,-150) (90,-140) (240,-40) (180,120) (-40,150) (-210,80) mm, 22 mm deep", ""));
        text.AppendLine($"viewed from {random.Next(360)} deg{Pick(random, "", ", at 1200 mm", ", at 1200 mm, eye 200 mm", ", eye 150 mm")}{Pick(random, "", ", near", ", far")}");
        var pitch = Pick(random, 1, 1, 1, 7, 30);
        for (var index = 0; index < trunks; index++)
        {
            int x = random.Next(-200 / pitch, 200 / pitch) * pitch, y = random.Next(-120 / pitch, 120 / pitch) * pitch;
            var size = random.Next(12) == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" diameter {random.Next(6, 45)} mm");
            var height = random.Next(12) == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" height {random.Next(60, 420)} mm");
            var lean = random.Next(6) == 0 ? string.Create(CultureInfo.InvariantCulture, $" lean {random.Next(2, 25)} deg toward {random.Next(360)} deg") : "";
            text.AppendLine(CultureInfo.InvariantCulture, $"trunk {Name(index)} at {x}, {y} mm{size}{height}{lean}{Pick(random, "", "", " role main", " role lee", " role windward")}");
        }

        text.AppendLine("role main { rank 1 aim diameter 40 mm by 2032 }");
        text.AppendLine("role windward { form stout rank 2 aim height 200 mm by 2030 }");
        text.AppendLine("role lee { form slender keep diameter under 22 mm }");
        text.AppendLine(Pick(random, "", "", "trunk UNPLACED diameter 14 mm height 160 mm role lee"));
        text.AppendLine(Pick(random, "", "", "mute touching because \"they grow together\"", "mute even-gaps because \"so\"", "mute hidden-trunk because \"so\"", "mute even-count because \"so\""));
        text.AppendLine(Pick(random, "", "", "tolerance wide-but-short 20 %", "tolerance three-in-line 0.8", "tolerance even-gaps-in-view 15 %", "tolerance hidden-trunk 30 %"));
        text.AppendLine(Pick(random, "", "", "accept even-count because \"so\"", "accept depth-reversed because \"so\""));
        return text.ToString();
    }

    /// <summary>The name of a trunk, in an order that is not the file's.</summary>
    /// <param name="index">Which one.</param>
    /// <returns>Such as "H1".</returns>
    public static string Name(int index) => string.Create(CultureInfo.InvariantCulture, $"{(char)('A' + (index * 7 % 26))}{index}");

    private static T Pick<T>(Random random, params ReadOnlySpan<T> choices) => choices[random.Next(choices.Length)];
}
