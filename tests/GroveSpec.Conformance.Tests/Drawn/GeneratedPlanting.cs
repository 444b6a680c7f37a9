using System.Globalization;
using System.Text;

namespace GroveSpec.Conformance.Tests.Drawn;

/// <summary>Plantings made from a number, to draw what nobody would think of.</summary>
internal static class GeneratedPlanting
{
    private static readonly string[] Kinds = ["prune", "pinch", "disbud", "feed", "repot", "measure", "photograph"];

    /// <summary>Writes a planting of 3 to 60 trunks with names of 1 to 20 letters.</summary>
    /// <param name="seed">The same number gives the same planting.</param>
    /// <returns>The text of its file.</returns>
    public static string Text(int seed)
    {
        var random = new Random(seed);
        var count = seed % 4 == 0 ? random.Next(30, 61) : random.Next(3, 31);
        var longest = random.Next(1, 21);
        var text = new StringBuilder();
        var width = random.Next(300, 800);
        var breadth = random.Next(200, 500);
        text.Append(CultureInfo.InvariantCulture, $"planting \"{Word(random, random.Next(3, 40))}\"\nspecies acer-buergerianum\n");
        text.Append(random.Next(3) switch
        {
            0 => FormattableString.Invariant($"container oval {width} x {breadth} x 40 mm\n"),
            1 => FormattableString.Invariant($"container rectangle {width} x {breadth} x 40 mm\n"),
            _ => FormattableString.Invariant($"container round {width} x 40 mm\n"),
        });
        text.Append(CultureInfo.InvariantCulture, $"site latitude 47 N, zone 7a, last frost 1 May, first frost 20 October\nviewed from 180 deg, at {random.Next(800, 2500)} mm, eye {random.Next(100, 400)} mm\n\n");

        var names = new List<string>();
        while (names.Count < count)
        {
            var name = Word(random, random.Next(1, longest + 1));
            if (names.Contains(name))
            {
                name += names.Count.ToString(CultureInfo.InvariantCulture);
            }

            if (name.Length <= 20 && !names.Contains(name))
            {
                names.Add(name);
            }
        }

        foreach (var name in names)
        {
            // Within the inscribed ellipse; trunks may touch or stand on one another, and labels have to bear it.
            var (angle, reach) = (random.NextDouble() * 2 * Math.PI, Math.Sqrt(random.NextDouble()) * 0.45);
            var diameter = random.Next(6, 50);
            text.Append(CultureInfo.InvariantCulture, $"trunk {name} at {Math.Round(Math.Cos(angle) * reach * width)}, {Math.Round(Math.Sin(angle) * reach * breadth)} mm diameter {diameter} mm height {(diameter * 8) + random.Next(60, 200)} mm");
            text.Append(random.Next(4) switch
            {
                0 => FormattableString.Invariant($" lean {random.Next(1, 25)} deg toward {random.Next(0, 360)} deg"),
                1 => FormattableString.Invariant($" crown {random.Next(20, 120)} mm"),
                2 when random.Next(4) == 0 => " planned spring 2028",
                3 when random.Next(6) == 0 => " removed 2026-03-01",
                _ => "",
            });
            text.Append('\n');
        }

        var tasks = random.Next(0, 16);
        for (var i = 0; i < tasks; i++)
        {
            var day = new DateOnly(2027, 1, 1).AddDays(random.Next(0, 600));
            text.Append(CultureInfo.InvariantCulture, $"task {Word(random, random.Next(1, 12))}-{i} {Kinds[random.Next(Kinds.Length)]} on {names[random.Next(names.Count)]} ");
            text.Append(random.Next(3) switch
            {
                0 => FormattableString.Invariant($"on {day:yyyy-MM-dd}"),
                1 => FormattableString.Invariant($"from {day:yyyy-MM-dd} to {day.AddDays(random.Next(5, 200)):yyyy-MM-dd}"),
                _ => FormattableString.Invariant($"every {random.Next(1, 6)} weeks, from {day:yyyy-MM-dd} to {day.AddDays(random.Next(30, 300)):yyyy-MM-dd}"),
            });
            text.Append('\n');
        }

        return text.ToString();
    }

    // A word of the language may not name a trunk by chance, so every name begins with a capital.
    private static string Word(Random random, int length)
    {
        const string Letters = "aaabcdeeeefghiiijklmmnoooprstuuwxyz";
        var word = new char[length];
        for (var i = 0; i < length; i++)
        {
            word[i] = Letters[random.Next(Letters.Length)];
        }

        word[0] = char.ToUpperInvariant(word[0]);
        return new string(word);
    }
}
