using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using GroveSpec.Model.Trunks;
using GroveSpec.Model.Views;
using NodaTime;

namespace GroveSpec.Drawing.Tests.Front;

/// <summary>Plantings for the tests of the front plate, in millimetres.</summary>
internal static class FrontPlantings
{
    public static Trunk Trunk(string name, double x, double y, double? diameter, double? height, double? crown = null) => new()
    {
        Name = name,
        Origin = new Origin($"trunk:{name}"),
        At = new Stated<PlanPoint>(PlanPoint.FromMillimetres(x, y), new Origin($"trunk:{name}/at")),
        Diameter = Stated(diameter, name, "diameter"),
        Height = Stated(height, name, "height"),
        Crown = Stated(crown, name, "crown"),
    };

    public static Container Oval(double width, double breadth, double depth = 45) =>
        new Container.Oval(Mm(width), Mm(breadth)) { Depth = Mm(depth), Origin = new Origin("head:container") };

    /// <summary>The larch bank of the language's own page.</summary>
    public static Planting SaltBank() => new()
    {
        Name = new Stated<string>("Salt Bank", new Origin("head:planting")),
        Species = new Stated<string>("larix-kaempferi", new Origin("head:species")),
        Profiles = [Profile("larix-kaempferi", LeafHabit.DeciduousConifer)],
        Container = new Container.Slab(
        [
            PlanPoint.FromMillimetres(-230, -90), PlanPoint.FromMillimetres(-120, -150), PlanPoint.FromMillimetres(90, -140),
            PlanPoint.FromMillimetres(240, -40), PlanPoint.FromMillimetres(180, 120), PlanPoint.FromMillimetres(-40, 150),
            PlanPoint.FromMillimetres(-210, 80),
        ])
        { Depth = Mm(22), Origin = new Origin("head:container") },
        Viewed = new Viewpoint { Origin = new Origin("head:viewed"), Distance = Mm(1100), EyeHeight = Mm(160), Depth = DepthOrder.Near },
        Trunks =
        [
            Trunk("A", -68, -31, 33, 260),
            Trunk("B", 22, 18, 28, 410) with { Lean = new Stated<Lean>(new Lean(new Angle(7), new Bearing(65)), new Origin("trunk:B/lean")) },
            Trunk("C", 71, 52, 19, 335),
            Trunk("D", -14, 66, 14, 240, 80),
            Trunk("E", 118, -9, 12, 205),
            Trunk("F", -121, 24, 16, 150) with { Removed = new Stated<Moment>(new Moment.Day(new LocalDate(2026, 3, 14)), new Origin("trunk:F/removed")) },
            Trunk("G", 31, 96, 9, 170) with { Planned = new Stated<Moment>(new Moment.Day(new LocalDate(2028, 3, 14)), new Origin("trunk:G/planned")) },
        ],
    };

    /// <summary>A planting thrown from a seed.</summary>
    public static Planting Thrown(int seed, int count, int letters, LeafHabit leaves = LeafHabit.Deciduous)
    {
        var random = new Random(seed);
        var trunks = ImmutableArray.CreateBuilder<Trunk>(count);
        var wide = 120 * Math.Sqrt(count);
        for (var index = 0; index < count; index++)
        {
            var height = 120 + (random.NextDouble() * random.NextDouble() * 500);
            trunks.Add(Trunk(
                Name(random, index, letters),
                (random.NextDouble() - 0.5) * wide,
                (random.NextDouble() - 0.5) * wide * 0.55,
                height / (8 + (random.NextDouble() * 14)),
                height) with
            {
                Lean = random.NextDouble() < 0.4
                    ? new Stated<Lean>(new Lean(new Angle(random.NextDouble() * 22), new Bearing(random.NextDouble() * 360)), Origin.Default)
                    : null,
            });
        }

        return new Planting
        {
            Name = new Stated<string>($"Thrown {seed}", new Origin("head:planting")),
            Species = new Stated<string>("some-tree", new Origin("head:species")),
            Profiles = [Profile("some-tree", leaves)],
            Container = Oval(wide * 1.35, wide * 0.85),
            Trunks = trunks.MoveToImmutable(),
        };
    }

    public static Finding Finding(string check, string message, string[] trunks, params Figure[] figures) => new()
    {
        Check = new CheckDescription { Name = check, Severity = Severity.Warning, Meaning = "m", Explanation = "e", Source = "common practice" },
        Severity = Severity.Warning,
        Place = default,
        Message = message,
        Trunks = [.. trunks],
        Figures = [.. figures],
    };

    public static DrawingSubject Subject(Planting planting, params Finding[] findings) => new(planting.StateOn(null), [.. findings]);

    private static string Name(Random random, int index, int letters)
    {
        var name = index.ToString(System.Globalization.CultureInfo.InvariantCulture);
        if (letters == 1)
        {
            return ((char)(index < 26 ? 'A' + index : index < 52 ? 'a' + index - 26 : 'α' + index - 52)).ToString();
        }

        while (name.Length < letters)
        {
            name = (char)('a' + random.Next(26)) + name;
        }

        return name;
    }

    private static SpeciesProfile Profile(string name, LeafHabit leaves) => new()
    {
        Name = name,
        Origin = new Origin($"profile:{name}"),
        Leaves = new Sourced<LeafHabit>(leaves, "from memory", Origin.Default),
    };

    private static Stated<Length>? Stated(double? value, string name, string part) =>
        value is { } given ? new Stated<Length>(Mm(given), new Origin($"trunk:{name}/{part}")) : null;

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
