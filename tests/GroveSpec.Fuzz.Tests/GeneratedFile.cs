using System.Globalization;
using System.Text;

namespace GroveSpec.Fuzz.Tests;

/// <summary>Writes a valid file by chance: all statements, with odd spacing, comments, units written or left out.</summary>
internal sealed class GeneratedFile
{
    private static readonly string[] Seasons = ["spring", "summer", "autumn", "winter"];
    private static readonly string[] Stages = ["bud-break", "leaf-out", "harden-off", "midsummer", "leaf-colour", "leaf-fall", "dormant"];
    private static readonly string[] Kinds =
    [
        "wire", "unwire", "look-over", "prune", "pinch", "disbud", "defoliate", "sacrifice", "remove-sacrifice", "repot", "root-prune",
        "feed", "shelter", "graft", "seal", "measure", "photograph",
    ];

    private static readonly string[] Notes = ["\"plain\"", "\"with \\\"quotes\\\" and \\\\\"", "\"# no comment\"", "\"<b>&amp;</b>\"", "\"\"", "\"två ord\\nand a line\""];
    private static readonly string[] Comments = ["# a note", "#", "#   spaced   out", "# \"quotes\" { } é", "## twice"];
    private static readonly string[] Checks = ["even-gaps", "three-in-line", "twin-heights", "hidden-trunk", "near-rim"];

    private readonly Random random;
    private readonly StringBuilder text = new();
    private readonly List<string> trunks = [];
    private readonly List<string> roles = [];
    private readonly List<string> tasks = [];
    private readonly string lineEnd;
    private readonly bool isLoose;

    private GeneratedFile(int seed)
    {
        random = new Random(seed);
        lineEnd = Chance(6) ? "\r\n" : "\n";
        isLoose = !Chance(4);
        foreach (var name in (string[])["A", "B", "C2", "é", "main-stem", "o'", "松", "near", "first", "🌲"])
        {
            if (Chance(2))
            {
                trunks.Add(name);
            }
        }

        if (trunks.Count == 0)
        {
            trunks.Add("T1");
        }

        roles.AddRange(["main", "lee", "far"]);
        tasks.AddRange(["W1", "w-2", "late-work"]);
    }

    /// <summary>The file of a seed, always the same.</summary>
    public static string Of(int seed)
    {
        var file = new GeneratedFile(seed);
        file.WriteAll();
        return file.text.ToString();
    }

    private void WriteAll()
    {
        Line("planting", Note());
        if (Chance(2))
        {
            Line("habit", Any("clump", "group", "raft"));
        }

        if (Chance(2))
        {
            Line("species", Any("larix-kaempferi", "betula-pendula", "acer"));
        }

        WriteContainer();
        WriteSite();
        if (Chance(2))
        {
            Line("viewed", Joined(
                Maybe("from " + Number(0, 359) + Unit("deg")), Maybe("at " + Number(300, 2000) + Unit("mm")), Maybe("eye " + Number(0, 300) + Unit("mm")), Maybe(Any("near", "far"))));
        }

        if (Chance(3))
        {
            Line("concept", Note());
        }

        for (var count = random.Next(1, 25); count > 0; count--)
        {
            WriteStatement();
        }
    }

    private void WriteStatement()
    {
        switch (random.Next(12))
        {
            case 0 or 1 or 2:
                WriteTrunk();
                break;
            case 3:
                Line("tape", $"{Any(trunks)} to {Any(trunks)} {Number(20, 200)}{Unit("mm")}{(Chance(4) ? " between bark" : string.Empty)}");
                break;
            case 4:
                WriteBlock($"role {Any(roles)}", RoleClauses(), canShareLine: true);
                break;
            case 5 or 6:
                WriteTask();
                break;
            case 7:
                Line("seen", $"{Any(Stages)} {Date()}");
                break;
            case 8:
                WriteBlock($"measured {Date()}", Readings(), canShareLine: false);
                break;
            case 9:
                Line("tolerance", $"{Any(Checks)} {Number(1, 30)} {Any("%", "mm", "deg", "days")}");
                break;
            case 10:
                Line(Any("accept", "accept", "mute") is "accept" ? $"accept {Any(Checks)} {string.Join(' ', trunks)}" : $"mute {Any(Checks)}", $"because {Note()}");
                break;
            default:
                WriteBlock($"profile {Any("larix-kaempferi", "acer")}", Entries(), canShareLine: true);
                break;
        }
    }

    private void WriteContainer()
    {
        switch (random.Next(5))
        {
            case 0:
                Line("container", $"{Any("oval", "rectangle")} {Number(200, 600)} x {Number(200, 400)} x {Number(20, 90)}{Unit("mm")}");
                break;
            case 1:
                Line("container", $"round {Number(20, 60)}{(Chance(2) ? "x" : " x ")}{Number(2, 9)} cm");
                break;
            case 2:
                Line("container", $"slab ({Number(-300, -90)},{Number(-200, -60)}) ( {Number(90, 300)} , {Number(-200, -60)} ) ({Number(-40, 90)},{Number(80, 200)}){Unit("mm")}, {Number(10, 40)}{Unit("mm")} deep");
                break;
        }
    }

    private void WriteSite()
    {
        if (Chance(3))
        {
            Line("site", Joined(
                Maybe($"latitude {Number(0, 66)}{(Chance(2) ? " deg" : string.Empty)} {Any("N", "S")}"),
                Maybe($"zone {random.Next(3, 11)}{Any(string.Empty, "a", "b")}"),
                Maybe($"last frost {random.Next(1, 29)} {Any("April", "May", "Jun")}"),
                Maybe($"first frost {random.Next(1, 29)} {Any("Sep", "October", "Nov")}"),
                Maybe("means " + string.Join(Any(" ", ", "), Enumerable.Range(0, 12).Select(_ => Number(-9, 25))) + (Chance(2) ? " C" : string.Empty)),
                Maybe($"sun from {Number(0, 359)}{Unit("deg")}")));
        }
    }

    private void WriteTrunk()
    {
        List<string> clauses =
        [
            $"at {Number(-200, 200)}{(Chance(6) ? " cm" : string.Empty)}, {Number(-200, 200)}{Unit("mm")}",
            $"{Any("diameter", "girth")} {Number(4, 60)}{Unit("mm")}",
            $"height {Number(80, 700)}{Unit("mm")}",
            $"role {Any(roles)}",
            $"lean {Number(0, 40)}{Unit("deg")} toward {Number(0, 359)}{Unit("deg")}",
            $"line (0,0,0) ({Number(-20, 20)},{Number(-20, 20)},{Number(50, 90)}) ({Number(-20, 20)}, {Number(-20, 20)}, {Number(100, 300)}){Unit("mm")}",
            $"crown {Number(30, 150)}{Unit("mm")}",
            $"species {Any("acer", "larix-kaempferi")}",
            $"raised {random.Next(1990, 2026)}",
            $"planned {Moment()}",
            $"removed {Moment()}",
            "fixed",
        ];
        if (Chance(4))
        {
            Shuffle(clauses);
        }

        Line($"trunk {Any(trunks)}", Joined([.. clauses.Where(_ => Chance(2))]));
    }

    private void WriteTask()
    {
        var target = Any("on all", $"on role {Any(roles)}", $"on {string.Join(Any(" ", ", "), trunks.Take(3))}", $"of {Any(tasks)}");
        List<string> parts =
        [
            target,
            $"in {Any(string.Empty, "early ", "mid ", "late ")}{Any(Seasons)} {random.Next(2024, 2032)}",
            $"from {Moment()} to {Moment()}",
            $"after {Moment()}",
            $"before {Moment()}",
            $"{random.Next(1, 5)} to {random.Next(5, 9)} weeks {Any("after", "before")} {Any(tasks)}",
            $"every {random.Next(1, 9)} {Any("days", "weeks", "months", "years")}",
            $"until {Moment()}",
            $"with {Any(string.Empty, "2 x ")}{Any("aluminium", "copper")} {Number(1, 6)}{Unit("mm")}",
            $"coil {Number(40, 60)}{Unit("deg")}",
            $"span {Number(0, 90)} to {Number(100, 300)}{Unit("mm")}",
            $"bend {Number(2, 40)}{Unit("deg")} toward {Number(0, 359)}{Unit("deg")}{(Chance(2) ? $" over {Number(20, 200)}{Unit("mm")}" : string.Empty)}",
            Any("low", "middle", "high"),
            $"facing {Any("back", "front", "left", "right", "90 deg")}",
            $"done {Date()}",
            Note(),
        ];
        var chosen = parts.Where(_ => Chance(4)).ToList();
        if (Chance(4))
        {
            Shuffle(chosen);
        }

        // A bare number would be read as the year of a task's name before it, so a comma stands before an offset.
        Line($"task {Any(tasks)} {(Chance(8) ? "other \"air-layer\"" : Any(Kinds))}", string.Join(", ", chosen));
    }

    private List<string> RoleClauses() =>
        [.. new[]
        {
            $"form {Any("stout", "slender", "balanced")}", $"vigour {Any("push", "steady", "restrain")}", $"aim {Any("diameter", "height")} {Number(10, 60)}{Unit("mm")} by {random.Next(2027, 2040)}",
            $"keep {Any("diameter", "height")} under {Number(10, 60)}{Unit("mm")}", $"rank {random.Next(1, 5)}", $"story {Note()}",
        }.Where(_ => Chance(2))];

    private List<string> Readings() =>
        [.. trunks.Where(_ => Chance(2)).Select(trunk =>
            $"{trunk}  {Any("diameter", "girth")} {Number(4, 90)}{Unit("mm")}{(Chance(2) ? $"{Any(" ", ", ")}height {Number(80, 700)}{Unit("mm")}" : string.Empty)}{(Chance(4) ? $"  crown {Number(20, 90)}" : string.Empty)}")];

    private List<string> Entries() =>
        [.. new[]
        {
            $"botanical \"Larix kaempferi\"{Source()}", $"common \"larch\"{Source()}", $"leaves {Any("deciduous-conifer", "evergreen")}{Source()}", $"hardiness {random.Next(2, 5)}{Any(string.Empty, "a")} to {random.Next(6, 9)}{Source()}",
            $"growth {Any("slow", "medium", "fast")}{Source()}", $"flush {Any("single", "partial", "repeated")}{Source()}", $"bend-limit {Number(1, 4)}{Unit("%")}{Source()}",
            $"stage {Any(Stages)} {random.Next(1, 30)} days {Any("before", "after")} {Any("last frost", "first frost", "solstice")} to {random.Next(1, 30)} days after {Any("last frost", "first frost", "solstice")}{Source()}", $"caution {Note()}{Source()}",
        }.Where(_ => Chance(2))];

    private string Source() => $"{Any(" ", ", ")}{Any("from memory", "common practice", $"source {Note()}")}";

    private void WriteBlock(string head, List<string> rows, bool canShareLine)
    {
        if (Chance(3) && (canShareLine || rows.Count <= 1))
        {
            Line(head, $"{{{Space()}{string.Join(Space(), rows)}{Space()}}}");
            return;
        }

        Line(head, "{");
        foreach (var row in rows)
        {
            Line("  " + row, string.Empty);
            Filler();
        }

        Line(Any("}", "  }"), string.Empty);
    }

    private void Line(string head, string rest)
    {
        text.Append(isLoose && Chance(9) ? Space() : string.Empty).Append(head);
        if (rest.Length > 0)
        {
            text.Append(Space()).Append(rest);
        }

        text.Append(Chance(9) ? Space() : string.Empty).Append(Chance(5) ? Space() + Any(Comments) : string.Empty).Append(lineEnd);
        if (!head.StartsWith("  ", StringComparison.Ordinal))
        {
            Filler();
        }
    }

    private void Filler()
    {
        if (Chance(8))
        {
            text.Append(Any(string.Empty, "  ", Any(Comments), "   " + Any(Comments) + "  ")).Append(lineEnd);
        }
    }

    private string Moment() => Any(
        Date(),
        $"{random.Next(2024, 2032)}",
        $"{random.Next(2024, 2032)}-0{random.Next(1, 10)}",
        $"{Any(string.Empty, "early ", "mid ", "late ")}{Any(Seasons)} {random.Next(2024, 2032)}",
        $"{Any(Stages)} {random.Next(2024, 2032)}",
        Any(tasks));

    private string Date() => $"{random.Next(2020, 2032)}-{random.Next(1, 13):00}-{random.Next(1, 29):00}";

    private string Number(int low, int high)
    {
        var whole = random.Next(low, high).ToString(CultureInfo.InvariantCulture);
        return Chance(3) ? $"{whole}.{random.Next(0, 1000)}" : whole;
    }

    private string Unit(string unit) => random.Next(4) switch
    {
        0 => string.Empty,
        1 => unit,
        _ => " " + unit,
    };

    private string Note() => Any(Notes);

    private string? Maybe(string clause) => Chance(2) ? clause : null;

    private string Joined(params string?[] clauses) => string.Join(Any("  ", ", ", " , "), clauses.Where(static clause => clause is not null));

    private string Space() => isLoose ? Any(" ", "  ", "\t", "     ") : " ";

    private bool Chance(int oneIn) => random.Next(oneIn) == 0;

    private string Any(params IReadOnlyList<string> choices) => choices[random.Next(choices.Count)];

    private void Shuffle(List<string> list)
    {
        for (var index = list.Count - 1; index > 0; index--)
        {
            var other = random.Next(index + 1);
            (list[index], list[other]) = (list[other], list[index]);
        }
    }
}
