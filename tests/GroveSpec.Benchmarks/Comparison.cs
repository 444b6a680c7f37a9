namespace GroveSpec.Benchmarks;

/// <summary>
/// Measures the program as whole cold processes against graphviz, in one run, taking turns, so that what else the machine does
/// falls on both. It installs nothing.
/// </summary>
internal static class Comparison
{
    // For the test command. The plan takes 0.93 times as long as neato for 1,000 trunks and as much for 10,000; where the system gives no
    // large pages of memory (RoomInMemory), 1.1 times. What else the machine does comes on top.
    private const double PlanGuard = 1.5;

    // What neato took for as many circles on the machine that the limits in milliseconds were set on (median of 2 cores, Debian 12).
    // They turn a limit in milliseconds into one that holds on any machine.
    private const double PeerNine = 11;
    private const double PeerThousand = 27;

    private const double NineMilliseconds = 20;
    private const double NineMegabytes = 40;
    private const double ThousandMilliseconds = 100;
    private const double CalendarMilliseconds = 100;
    private const int Tasks = 2_000;
    private const int Years = 30;

    /// <summary>Runs all.</summary>
    /// <param name="words"><c>--ratios</c> to hold only what does not depend on the machine; <c>--program PATH</c>; <c>--runs NUMBER</c>.</param>
    /// <param name="writer">Where the table goes.</param>
    /// <returns>0 when every bound holds, 1 when one is broken, 2 when something is missing.</returns>
    public static int Run(string[] words, TextWriter writer)
    {
        var program = CommandWords.ProgramOf(words);
        var runs = int.TryParse(CommandWords.Behind(words, "--runs"), out var number) ? number : 15;
        if (!File.Exists(program))
        {
            writer.WriteLine($"{program} is missing. Make it: dotnet publish src/GroveSpec.Cli -c Release -p:Native=true -o artifacts/program");
            return 2;
        }

        var peer = CommandWords.FindOnPath("neato");
        if (peer is null)
        {
            writer.WriteLine("neato is missing: it is part of graphviz. Without it there is nothing to compare with.");
            return 2;
        }

        if (!File.Exists(ProcessRun.MemoryMeter))
        {
            writer.WriteLine($"{ProcessRun.MemoryMeter} is missing (the package time): memory is not measured.");
        }

        var folder = Directory.CreateTempSubdirectory("grovespec-benchmark-");
        try
        {
            return Compare(Path.GetFullPath(program), peer, folder.FullName, runs, words.Contains("--ratios"), writer);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static int Compare(string program, string peer, string folder, int runs, bool isRatios, TextWriter writer)
    {
        Contest Check(int trunks) => new($"check, {trunks:N0} trunks", program, ["check", Planting(folder, trunks)]);
        Contest Plan(int trunks) => new($"draw --view plan, {trunks:N0} trunks", program, ["draw", "--view", "plan", Planting(folder, trunks)]);
        Contest Peer(int trunks) => new($"neato -n2 -Tsvg, {trunks:N0} circles", peer, ["-n2", "-Tsvg", Graph(folder, trunks)]);

        Contest calendar = new($"calendar, {Tasks:N0} tasks of {Years} years", program, ["calendar", "--json", Write(Path.Combine(folder, "work.grove"), () => Inputs.Work(Tasks, Years))]);
        Contest checkNine = Check(9), peerNine = Peer(9);
        Contest checkThousand = Check(1_000), planThousand = Plan(1_000), peerThousand = Peer(1_000);
        Contest planTenThousand = Plan(10_000), peerTenThousand = Peer(10_000);
        Contest[] all = [checkNine, peerNine, checkThousand, calendar, planThousand, peerThousand, planTenThousand, peerTenThousand];
        foreach (var contest in all)
        {
            contest.Weigh();
        }

        for (var run = 0; run < runs; run++)
        {
            foreach (var contest in all)
            {
                contest.Run();
            }
        }

        writer.WriteLine($"{"whole process, cold",-40}{"least ms",10}{"median ms",11}{"peak MB",9}");
        foreach (var contest in all)
        {
            writer.WriteLine($"{contest.Title,-40}{contest.Least,10:0.0}{contest.Median,11:0.0}{contest.Memory,9:0.0}");
        }

        // In the test command the bound only keeps what was won from being lost, on any machine.
        var planLimit = isRatios ? PlanGuard : 1;
        Bound[] bounds =
        [
            .. isRatios
                ? (ReadOnlySpan<Bound>)
                [
                    new("check of 9 to neato of 9", checkNine.Least / peerNine.Least, NineMilliseconds / PeerNine, "times"),
                    new("check of 1,000 to neato of 1,000", checkThousand.Least / peerThousand.Least, ThousandMilliseconds / PeerThousand, "times"),
                    new("calendar of 2,000 to neato of 1,000", calendar.Least / peerThousand.Least, CalendarMilliseconds / PeerThousand, "times"),
                ]
                :
                [
                    new("check of 9", checkNine.Median, NineMilliseconds, "ms"),
                    new("check of 1,000", checkThousand.Median, ThousandMilliseconds, "ms"),
                    new("calendar of 2,000", calendar.Median, CalendarMilliseconds, "ms"),
                ],
            new("memory for a check of 9", checkNine.Memory, NineMegabytes, "MB"),
            new("plan of 1,000 to neato of 1,000", planThousand.Least / peerThousand.Least, planLimit, "times"),
            new("plan of 10,000 to neato of 10,000", planTenThousand.Least / peerTenThousand.Least, planLimit, "times"),
        ];
        writer.WriteLine();
        foreach (var bound in bounds)
        {
            writer.WriteLine($"{bound.Title,-40}{bound.Measured,10:0.00} of at most {bound.Limit:0.00} {bound.Unit}: {bound.Verdict}");
        }

        return bounds.Any(bound => bound.IsBroken) ? 1 : 0;
    }

    private static string Planting(string folder, int trunks) => Write(Path.Combine(folder, $"{trunks}.grove"), () => Inputs.Planting(trunks));

    private static string Graph(string folder, int trunks) => Write(Path.Combine(folder, $"{trunks}.gv"), () => Inputs.Graph(trunks));

    private static string Write(string path, Func<string> text)
    {
        if (!File.Exists(path))
        {
            File.WriteAllText(path, text());
        }

        return path;
    }
}
