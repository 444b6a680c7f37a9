using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Times;
using GroveSpec.Model.Trunks;
using GroveSpec.Model.Views;
using GroveSpec.Syntax.Text;
using NodaTime;

namespace GroveSpec.Drawing.Tests;

/// <summary>Plantings to draw, made without a text.</summary>
internal static class Plantings
{
    /// <summary>The planting of the language's own page, with one finding of each figure that a plan shows.</summary>
    public static DrawingSubject SaltBank()
    {
        var planting = new Planting
        {
            Name = new("Salt Bank", new Origin("head:planting")),
            Species = new("larix-kaempferi", new Origin("head:species")),
            Container = new Container.Slab(
                [.. new[] { (-230, -90), (-120, -150), (90, -140), (240, -40), (180, 120), (-40, 150), (-210, 80) }.Select(p => PlanPoint.FromMillimetres(p.Item1, p.Item2))])
            {
                Depth = Millimetres(22),
                Origin = new Origin("head:container"),
            },
            Viewed = new Viewpoint { Origin = new Origin("head:viewed"), Distance = Millimetres(1100), EyeHeight = Millimetres(160), Depth = DepthOrder.Near },
            Trunks =
            [
                Trunk("A", -68, -31, 33, 260),
                Trunk("B", 22, 18, 28, 410) with { Lean = new(new Lean(new Angle(7), new Bearing(65)), new Origin("trunk:B/lean")) },
                Trunk("C", 71, 52, 19, 335),
                Trunk("D", -14, 66, 14, 240) with { Crown = new(Millimetres(80), new Origin("trunk:D/crown")) },
                Trunk("E", 118, -9, 12, 205),
                Trunk("F", -121, 24, 16, 150) with { Removed = new(new Moment.Day(new LocalDate(2026, 3, 14)), new Origin("trunk:F/removed")) },
                Trunk("G", 32, 97, 9, 170) with { Planned = new(new Moment.Year(2028), new Origin("trunk:G/planned")) },
            ],
        };
        return new DrawingSubject(
            planting.StateOn(new LocalDate(2026, 10, 30)),
            [
                Finding("three-in-line", "A straight rod could pass through A, B and C: it misses their centres by 1.8 mm at most. Move one of them at least 6 mm aside.", new Figure.Rod(PlanPoint.FromMillimetres(-68, -31), PlanPoint.FromMillimetres(71, 52))),
                Finding("even-gaps", "From B, the gaps to C and D are the same to within 1 % (59.6 and 60 mm).", new Figure.Gap("B", "C"), new Figure.Gap("B", "D")),
                Finding("centred-main", "B, the largest, stands 22 mm from the middle of the view.", new Figure.Ring("E")),
            ]);
    }

    /// <summary>A planting of so many trunks, scattered by a seed.</summary>
    public static DrawingSubject Scattered(int count, int seed, int nameLength = 1, double widthMm = 500, bool hasFindings = true)
    {
        var random = new Random(seed);
        var trunks = new List<Trunk>();
        var breadthMm = widthMm * 0.62;
        for (var attempt = 0; trunks.Count < count && attempt < 200 * count; attempt++)
        {
            var (x, y) = ((random.NextDouble() - 0.5) * widthMm * 0.86, (random.NextDouble() - 0.5) * breadthMm * 0.86);
            if ((x * x / (widthMm * widthMm)) + (y * y / (breadthMm * breadthMm)) > 0.19
                || trunks.Exists(t => Math.Pow(t.At!.Value.Value.X.Millimetres - x, 2) + Math.Pow(t.At!.Value.Value.Y.Millimetres - y, 2) < 0.25 * widthMm * breadthMm / count))
            {
                continue;
            }

            var diameter = widthMm * (0.012 + (0.05 * random.NextDouble() / Math.Sqrt(count / 7.0)));
            var trunk = Trunk(NameOf(trunks.Count, nameLength, random), Math.Round(x, 1), Math.Round(y, 1), Math.Round(diameter, 1), Math.Round(diameter * (8 + (6 * random.NextDouble()))));
            trunks.Add(random.Next(4) == 0 ? trunk with { Lean = new(new Lean(new Angle(5 + (10 * random.NextDouble())), new Bearing(360 * random.NextDouble())), trunk.Origin.Part("lean")) } : trunk);
        }

        var planting = new Planting
        {
            Name = new($"Scattered {count}", new Origin("head:planting")),
            Species = new("acer-buergerianum", new Origin("head:species")),
            Container = new Container.Oval(Millimetres(widthMm), Millimetres(breadthMm)) { Depth = Millimetres(40), Origin = new Origin("head:container") },
            Viewed = new Viewpoint { Origin = new Origin("head:viewed"), From = new Bearing(seed % 4 == 0 ? 180 : 360 * random.NextDouble()), Distance = Millimetres(1000), EyeHeight = Millimetres(200) },
            Trunks = [.. trunks],
        };
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (hasFindings && trunks.Count >= 3)
        {
            findings.Add(Finding("three-in-line", $"A straight rod could pass through {trunks[0].Name}, {trunks[1].Name} and another.", new Figure.Rod(trunks[0].At!.Value.Value, trunks[1].At!.Value.Value)));
            findings.Add(Finding("even-gaps", "Two neighbouring gaps are the same.", new Figure.Gap(trunks[0].Name, trunks[2].Name), new Figure.Gap(trunks[1].Name, trunks[2].Name)));
            findings.Add(Finding("touching", "One trunk touches another.", new Figure.Ring(trunks[1].Name)));
        }

        return new DrawingSubject(planting.StateOn(null), findings.ToImmutable());
    }

    public static Trunk Trunk(string name, double xMm, double yMm, double diameterMm, double heightMm)
    {
        var origin = new Origin($"trunk:{name}");
        return new Trunk
        {
            Name = name,
            Origin = origin,
            At = new(PlanPoint.FromMillimetres(xMm, yMm), origin.Part("at")),
            Diameter = new(Millimetres(diameterMm), origin.Part("diameter")),
            Height = new(Millimetres(heightMm), origin.Part("height")),
        };
    }

    public static Finding Finding(string check, string message, params Figure[] figures) => new()
    {
        Check = new CheckDescription { Name = check, Severity = Severity.Warning, Meaning = "", Explanation = "", Source = "the language" },
        Severity = Severity.Warning,
        Place = new SourceSpan("a.grove", default),
        Message = message,
        Figures = [.. figures],
    };

    public static Length Millimetres(double value) => Length.FromMillimetres(value);

    private static string NameOf(int index, int length, Random random)
    {
        if (length <= 1 && index < 26)
        {
            return ((char)('A' + index)).ToString();
        }

        var letters = Enumerable.Range(0, length).Select(i => (char)((i == 0 ? 'A' : 'a') + random.Next(26))).ToArray();
        return $"{new string(letters)}{(length < 4 ? index.ToString() : "")}";
    }
}
