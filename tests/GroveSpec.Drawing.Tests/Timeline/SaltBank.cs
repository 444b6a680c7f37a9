using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Roles;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using GroveSpec.Model.Trunks;
using GroveSpec.Model.Views;
using NodaTime;

namespace GroveSpec.Drawing.Tests.Timeline;

/// <summary>The planting of the language's own example, built in code so that a drawing's test needs no parser.</summary>
internal static class SaltBank
{
    /// <summary>Salt Bank, seven larches on a slab.</summary>
    public static Planting Planting() => new()
    {
        Name = new("Salt Bank", new("head:planting")),
        Habit = new(Habit.Group, new("head:habit")),
        Species = new("larix-kaempferi", new("head:species")),
        Concept = new("The bank rises away from the sea. What the salt reaches stays low and thick; what it misses runs up.", new("head:concept")),
        Container = new Container.Slab([P(-230, -90), P(-120, -150), P(90, -140), P(240, -40), P(180, 120), P(-40, 150), P(-210, 80)]) { Depth = Mm(22), Origin = new("head:container") },
        Site = new Site
        {
            Origin = new("head:site"),
            Latitude = new(new Angle(54.3), new("head:site")),
            LastFrost = new(new AnnualDate(5, 2), new("head:site")),
            FirstFrost = new(new AnnualDate(11, 9), new("head:site")),
        },
        Viewed = new Viewpoint { Origin = new("head:viewed"), From = Bearing.Front, Distance = Mm(1100), EyeHeight = Mm(160), Depth = DepthOrder.Near },
        Trunks =
        [
            Trunk("A", P(-68, -31), 33, 260, "windward") with { Raised = new(2014, new("trunk:A/raised")) },
            Trunk("B", P(22, 18), 28, 410, "main") with { Lean = new(new Lean(new Angle(7), new Bearing(65)), new("trunk:B/lean")) },
            Trunk("C", P(71, 52), 19, 335, "lee"),
            Trunk("D", P(-14, 66), 14, 240, "lee") with { Crown = new(Mm(80), new("trunk:D/crown")) },
            Trunk("E", P(118, -9), 12, 205, "lee"),
            Trunk("F", P(-121, 24), 16, 150, "windward") with { Removed = new(new Moment.Day(new(2026, 3, 14)), new("trunk:F/removed")) },
            Trunk("G", P(31, 96), 9, 170, "lee") with { Planned = new(new Moment.SeasonOfYear(SeasonPart.Whole, Season.Spring, 2028), new("trunk:G/planned")) },
        ],
        Roles =
        [
            new Role { Name = "windward", Origin = new("role:windward"), Form = new(Form.Stout, new("role:windward")), Vigour = new(Vigour.Restrain, new("role:windward")), Aims = [new(Dimension.Diameter, Mm(38), 2031, new("role:windward"))], Story = new("clipped by salt every winter", new("role:windward")) },
            new Role { Name = "main", Origin = new("role:main"), Vigour = new(Vigour.Push, new("role:main")), Aims = [new(Dimension.Diameter, Mm(40), 2030, new("role:main"))], Rank = new(1, new("role:main")) },
            new Role { Name = "lee", Origin = new("role:lee"), Form = new(Form.Slender, new("role:lee")), Vigour = new(Vigour.Steady, new("role:lee")), Ceilings = [new(Dimension.Diameter, Mm(22), new("role:lee"))] },
        ],
        Tasks =
        [
            Task("W1", TaskKind.Wire, On("B", "C"), In(SeasonPart.Late, Season.Autumn, 2026)) with { Details = [new TaskDetail.WithWire(WireMetal.Aluminium, Mm(3.5), 1) { Origin = new("task:W1") }] },
            Task("L1", TaskKind.LookOver, Of("W1"), new TimeClause.Every(2, TimeUnit.Weeks) { Origin = new("task:L1") }, new TimeClause.Until(new Moment.OfTask("U1")) { Origin = new("task:L1") }),
            Task("U1", TaskKind.Unwire, Of("W1"), new TimeClause.Offset(6, 8, TimeUnit.Weeks, IsAfter: true, "W1") { Origin = new("task:U1") }),
            Task("R1", TaskKind.Disbud, new TaskTarget.OnAll(), new TimeClause.After(new Moment.StageOfYear(Stage.LeafOut, 2027)) { Origin = new("task:R1") }) with { Note = new("keep the outward buds", new("task:R1/note")) },
            Task("P1", TaskKind.Pinch, On("C", "D"), new TimeClause.Every(3, TimeUnit.Weeks) { Origin = new("task:P1") }, new TimeClause.FromTo(new Moment.StageOfYear(Stage.HardenOff, 2027), new Moment.StageOfYear(Stage.Midsummer, 2027)) { Origin = new("task:P1") }),
            Task("S1", TaskKind.Sacrifice, On("B"), new TimeClause.FromTo(new Moment.StageOfYear(Stage.LeafOut, 2027), new Moment.StageOfYear(Stage.LeafFall, 2029)) { Origin = new("task:S1") }),
            Task("S2", TaskKind.RemoveSacrifice, Of("S1"), In(SeasonPart.Late, Season.Winter, 2030)),
            Task("T1", TaskKind.Repot, new TaskTarget.OnAll(), In(SeasonPart.Early, Season.Spring, 2028), new TimeClause.Before(new Moment.StageOfYear(Stage.BudBreak, 2028)) { Origin = new("task:T1") }),
        ],
        Measured =
        [
            new MeasuredDay(
                new(2026, 10, 30),
                [
                    new TrunkReading { Trunk = "A", Origin = new("reading:2026-10-30:A"), Diameter = new(Mm(33.1), new("reading:2026-10-30:A")), Height = new(Mm(258), new("reading:2026-10-30:A")) },
                    new TrunkReading { Trunk = "B", Origin = new("reading:2026-10-30:B"), IsGirth = true, Diameter = new(Mm(89 / Math.PI), new("reading:2026-10-30:B")), Height = new(Mm(408), new("reading:2026-10-30:B")) },
                ],
                new("reading:2026-10-30")),
        ],
    };

    /// <summary>A task with origins of its own.</summary>
    public static PlantingTask Task(string name, TaskKind kind, TaskTarget? target, params TimeClause[] times) =>
        new() { Name = name, Origin = new($"task:{name}"), Kind = new(kind, new($"task:{name}")), Target = target, Times = [.. times] };

    /// <summary>On some trunks.</summary>
    public static TaskTarget On(params string[] names) => new TaskTarget.OnTrunks([.. names.Select(name => new Stated<string>(name, new("test")))]);

    /// <summary>Of another task.</summary>
    public static TaskTarget Of(string name) => new TaskTarget.OfTask(new(name, new("test")));

    /// <summary>In a season.</summary>
    public static TimeClause In(SeasonPart part, Season season, int year) => new TimeClause.During(new Moment.SeasonOfYear(part, season, year)) { Origin = new("test") };

    /// <summary>A trunk with a place, a diameter, a height and a role.</summary>
    public static Trunk Trunk(string name, PlanPoint at, double diameter, double height, string role) => new()
    {
        Name = name,
        Origin = new($"trunk:{name}"),
        At = new(at, new($"trunk:{name}/at")),
        Diameter = new(Mm(diameter), new($"trunk:{name}/diameter")),
        Height = new(Mm(height), new($"trunk:{name}/height")),
        Role = new(role, new($"trunk:{name}/role")),
    };

    private static PlanPoint P(double x, double y) => PlanPoint.FromMillimetres(x, y);

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
