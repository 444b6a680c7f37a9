using System.Diagnostics;
using System.Globalization;

namespace GroveSpec.Benchmarks;

/// <summary>Measures the language server beside those of C, JSON and YAML in one run, taking turns. It installs nothing.</summary>
internal static class ServerComparison
{
    // What the quickest peer took from an edit of 1,000 lines to its findings on the machine that the limits in milliseconds were
    // set on (median of 2 cores, Debian 12, its own waiting included). It turns them into limits that hold on any machine.
    private const double PeerEdit = 76;

    private const double NineMedian = 3;
    private const double NineOfHundred = 15;
    private const double ThousandMedian = 20;
    private const double WorkMedian = 20;

    private const double Megabytes = 60;
    private const int Edits = 50_000;

    // Behind these words stands a number of two digits or more that can be changed and still be meant.
    private const string Heights = "height ";
    private const string OfWork = "unwire of W0 ";

    // Much of a peer's time is waiting, which a busy machine does not stretch as it does work; in the test command the limits on
    // edits are wider by as much as that was seen to make.
    private const double Slack = 3;

    /// <summary>Runs all.</summary>
    /// <param name="words"><c>--ratios</c> to hold only what does not depend on the machine; <c>--program PATH</c>; <c>--peers FOLDER</c>, where npm put the other servers.</param>
    /// <param name="writer">Where the table goes.</param>
    /// <returns>0 when every bound holds, 1 when one is broken, 2 when something is missing.</returns>
    public static int Run(string[] words, TextWriter writer)
    {
        var program = CommandWords.ProgramOf(words);
        var packages = Path.Combine(CommandWords.Behind(words, "--peers") ?? "tests/GroveSpec.Benchmarks/peers", "node_modules");
        var clangd = CommandWords.FindOnPath("clangd") ?? "clangd";
        string[] needed = [program, clangd, JsonServer(packages), YamlServer(packages)];
        foreach (var missing in needed.Where(path => !File.Exists(path)))
        {
            writer.WriteLine($"{missing} is missing: there is nothing to measure, or to compare with.");
            return 2;
        }

        var folder = Directory.CreateTempSubdirectory("grovespec-benchmark-");
        try
        {
            return Compare(Path.GetFullPath(program), clangd, packages, folder.FullName, words.Contains("--ratios"), writer);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static int Compare(string program, string clangd, string packages, string folder, bool isRatios, TextWriter writer)
    {
        Server own = new("grovespec", program, ["language-server"], "grovespec", ".grove");
        Server[] peers =
        [
            new("clangd", clangd, ["--log=error"], "c", ".c"),
            new("json", "node", [JsonServer(packages), "--stdio"], "json", ".json"),
            new("yaml", "node", [YamlServer(packages), "--stdio"], "yaml", ".yaml"),
        ];

        var hellos = peers.Append(own).ToDictionary(server => server, _ => new List<double>());
        for (var run = 0; run < 25; run++)
        {
            foreach (var (server, times) in hellos)
            {
                times.Add(Hello(server, folder));
            }
        }

        writer.WriteLine($"{"spawn to initialize answered",-44}{"least ms",10}{"median ms",11}");
        foreach (var (server, times) in hellos)
        {
            writer.WriteLine($"{server.Name,-44}{times.Min(),10:0.0}{Median(times),11:0.0}");
        }

        writer.WriteLine();
        writer.WriteLine($"{"edit to findings",-44}{"median ms",10}{"99th ms",11}{"peak MB",9}");
        var quickest = double.MaxValue;
        foreach (var peer in peers)
        {
            using var server = new ServerUnderTest(peer.Program, peer.Words);
            var times = EditPeer(server, peer, folder, 20);
            quickest = Math.Min(quickest, Median(times));
            Tell($"{peer.Name}, 1,000 lines", times, server);
        }

        using var nine = new ServerUnderTest(own.Program, own.Words);
        var nineTimes = Edit(nine, folder, "9", Inputs.Planting(9), Heights, 1_000);
        Tell("grovespec, 9 trunks", nineTimes, nine);
        using var thousand = new ServerUnderTest(own.Program, own.Words);
        var thousandTimes = Edit(thousand, folder, "1000", Inputs.Planting(1_000), Heights, 150);
        Tell("grovespec, 1,000 trunks", thousandTimes, thousand);
        using var work = new ServerUnderTest(own.Program, own.Words);
        var workTimes = Edit(work, folder, "work", Inputs.Work(2_000, 30), OfWork, 150);
        Tell("grovespec, 2,000 tasks of 30 years", workTimes, work);
        var (first, second) = Endure(nine, folder);
        writer.WriteLine();
        writer.WriteLine($"{Edits:N0} edits: {first:0.0} MB at most in the first half of them, {second:0.0} MB in the second");

        var unit = isRatios ? "times" : "ms";
        double Scaled(double milliseconds) => isRatios ? milliseconds / quickest : milliseconds;
        double Limit(double milliseconds) => isRatios ? Slack * milliseconds / PeerEdit : milliseconds;
        Bound[] bounds =
        [
            new("hello to that of the quickest peer", hellos[own].Min() / peers.Min(peer => hellos[peer].Min()), 1.0 / 3, "times"),
            new("edit of 9 trunks, median", Scaled(Median(nineTimes)), Limit(NineMedian), unit),
            new("edit of 9 trunks, 99th of 100", Scaled(Share(nineTimes, 0.99)), Limit(NineOfHundred), unit),
            new("edit of 1,000 trunks, median", Scaled(Median(thousandTimes)), Limit(ThousandMedian), unit),
            new("edit of 2,000 tasks, median", Scaled(Median(workTimes)), Limit(WorkMedian), unit),
            new($"memory after {Edits:N0} edits", nine.MegabytesAtMost, Megabytes, "MB"),
            new("growth over the second half of them", second / first, 1.1, "times"),
        ];
        writer.WriteLine();
        foreach (var bound in bounds)
        {
            writer.WriteLine($"{bound.Title,-44}{bound.Measured,10:0.000} of at most {bound.Limit:0.000} {bound.Unit}: {bound.Verdict}");
        }

        return bounds.Any(bound => bound.IsBroken) ? 1 : 0;

        void Tell(string title, List<double> times, ServerUnderTest server) => writer.WriteLine($"{title,-44}{Median(times),10:0.00}{Share(times, 0.99),11:0.00}{server.MegabytesAtMost,9:0.0}");
    }

    private static double Hello(Server server, string folder)
    {
        var clock = Stopwatch.StartNew();
        using var started = new ServerUnderTest(server.Program, server.Words);
        started.Initialize(folder);
        return clock.Elapsed.TotalMilliseconds;
    }

    private static List<double> Edit(ServerUnderTest server, string folder, string name, string text, string before, int edits)
    {
        var uri = UriOf(folder, $"{name}.grove");
        server.Initialize(folder);
        server.Open(uri, "grovespec", text);
        var (line, start) = PlaceOf(text, before);
        var times = new List<double>();
        for (var edit = 0; edit < edits; edit++)
        {
            var clock = Stopwatch.StartNew();
            server.Change(uri, edit + 2, line, start, start + LengthBefore(edit), Word(edit));
            server.WaitForFindings(edit + 2);
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        return times;
    }

    /// <summary>
    /// Goes on editing the planting of nine trunks, at most a hundred edits ahead of the findings. Told is the most memory of either half:
    /// what it is at one moment depends on how long ago the collector ran.
    /// </summary>
    private static (double First, double Second) Endure(ServerUnderTest server, string folder)
    {
        var text = Inputs.Planting(9);
        var uri = UriOf(folder, "9.grove");
        var (line, start) = PlaceOf(text, Heights);
        Span<double> most = [0, 0];
        for (var edit = 0; edit < Edits; edit++)
        {
            server.Change(uri, 10_000 + edit, line, start, start + LengthBefore(edit), Word(edit));
            if (edit % 100 == 99)
            {
                server.WaitForFindings(10_000 + edit);
                ref var half = ref most[edit < Edits / 2 ? 0 : 1];
                half = Math.Max(half, server.MegabytesNow);
            }
        }

        return (most[0], most[1]);
    }

    private static List<double> EditPeer(ServerUnderTest server, Server peer, string folder, int edits)
    {
        // A thousand lines, and one that each edit makes wrong in another way, so that findings have to come.
        var lines = Enumerable.Range(0, 1_000).Select(line => peer.Language switch
        {
            "c" => string.Create(CultureInfo.InvariantCulture, $"int number{line} = 10;"),
            "json" => string.Create(CultureInfo.InvariantCulture, $"  \"number{line}\": 10,"),
            _ => string.Create(CultureInfo.InvariantCulture, $"number{line}: 10"),
        });
        var text = peer.Language == "json" ? "{\n" + string.Join('\n', lines) + "\n}\n" : "\n" + string.Join('\n', lines) + "\n";
        var path = Path.Combine(folder, "peer" + peer.Ending);
        File.WriteAllText(path, text);
        var uri = new Uri(path).AbsoluteUri;
        server.Initialize(folder);
        server.Open(uri, peer.Language, text);
        var times = new List<double>();
        var length = 0;
        for (var edit = 0; edit < edits; edit++)
        {
            var wrong = edit % 2 == 0 ? "}}} {" : "]]] [";
            var clock = Stopwatch.StartNew();
            server.Change(uri, edit + 2, 0, 0, length, wrong);
            server.WaitForFindings(edit + 2);
            times.Add(clock.Elapsed.TotalMilliseconds);
            length = wrong.Length;
        }

        return times;
    }

    private static (int Line, int Start) PlaceOf(string text, string before)
    {
        var lines = text.Split('\n');
        var line = Array.FindIndex(lines, line => line.Contains(before, StringComparison.Ordinal));
        return (line, lines[line].IndexOf(before, StringComparison.Ordinal) + before.Length);
    }

    /// <summary>Two digits in place of the first two of a number; behind a blank in every other edit, so that each moves all that stands behind it.</summary>
    private static string Word(int edit) => string.Create(CultureInfo.InvariantCulture, $"{(edit % 2 == 0 ? " " : "")}{10 + (edit % 40)}");

    /// <summary>How long the run is that an edit changes. The last of an even number of edits leaves it as it was before the first.</summary>
    private static int LengthBefore(int edit) => edit % 2 == 0 ? 2 : 3;

    private static string UriOf(string folder, string name) => new Uri(Path.Combine(folder, name)).AbsoluteUri;

    private static double Median(List<double> times) => Share(times, 0.5);

    private static double Share(List<double> times, double share) => times.Order().ElementAt((int)Math.Min(times.Count - 1, times.Count * share));

    private static string JsonServer(string packages) => Path.Combine(packages, "vscode-langservers-extracted", "bin", "vscode-json-language-server");

    private static string YamlServer(string packages) => Path.Combine(packages, "yaml-language-server", "bin", "yaml-language-server");

    /// <summary>A language server and what it reads.</summary>
    private sealed record Server(string Name, string Program, string[] Words, string Language, string Ending);
}
