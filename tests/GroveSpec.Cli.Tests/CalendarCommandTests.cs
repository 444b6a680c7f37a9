using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace GroveSpec.Cli.Tests;

public sealed class CalendarCommandTests : IDisposable
{
    private const string Year = """
        planting  "Quiet corner"
        habit     group
        species   acer-buergerianum
        container oval 360 x 240 x 40 mm
        site      latitude 51 N, zone 8b, last frost 3 May, first frost 1 November
        viewed    from 180 deg, at 1000 mm
        trunk A   at -58, -22 mm   diameter 33 mm   height 410 mm   role lee
        trunk B   at 41, 12 mm     diameter 21 mm   height 290 mm   role lee
        trunk C   at 92, -39 mm    diameter 13 mm   height 180 mm
        role lee  { vigour steady }
        task W1   wire      on B    in early autumn 2026   with aluminium 5 mm   done 2026-09-20
        task L1   look-over of W1   every 2 weeks until U1
        task U1   unwire    of W1   6 to 8 weeks after W1
        task P1   prune     on C    in 2026-02             "small cuts"
        task R1   repot     on all  in early spring 2027
        task F1   feed      on role lee   in summer 2027
        task D1   measure   on A    from 2026-12-01 to 2026-12-24
        task N1   photograph on all

        """;

    private readonly Workplace work = new();

    public CalendarCommandTests() => work.Write("a.grove", Year);

    public void Dispose() => work.Dispose();

    [Fact]
    public void Work_is_told_by_how_near_it_is()
    {
        var answer = work.Run("calendar", "a.grove", "--on", "2026-10-20");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.Equal(
            """
            Quiet corner, the work seen from 20 October 2026

              Overdue on 20 October 2026
                P1  prune on C: 1 to 28 February 2026, 234 days over  “small cuts”
                L1  look over on B: 2 turns not marked as done, the first 4 October 2026; next 1 November 2026

              Later in the autumn, until 30 November 2026
                U1  unwire on B: 1 to 15 November 2026, 14 days of slack

              Later in 2026
                D1  measure on A: 1 to 24 December 2026, 23 days of slack

              After 2026
                R1  repot on all: 1 to 31 March 2027, 30 days of slack
                F1  feed on role lee: 1 June to 31 August 2027, 91 days of slack

              Without a date
                N1  photograph on all: no time is written down

              Done, or over
                W1  wire on B: done 20 September 2026


            """.ReplaceLineEndings("\n"),
            answer.Output);
    }

    [Fact]
    public void By_trunk_each_trunk_has_its_own_work_and_that_of_its_role_and_of_all()
    {
        var output = work.Run("calendar", "a.grove", "--by", "trunk").Output;
        Assert.Equal("L1 U1 R1 F1 N1 W1", Under(output, "  B", "  C"));
        Assert.Equal("P1 R1 N1", Under(output, "  C", null));
        Assert.Contains("D1", Under(output, "  A", "  B"), StringComparison.Ordinal);
        Assert.DoesNotContain("P1", Under(output, "  A", "  B"), StringComparison.Ordinal);
    }

    [Fact]
    public void By_kind_the_kinds_stand_in_the_order_of_the_alphabet()
    {
        var output = work.Run("calendar", "a.grove", "--by", "kind").Output;
        Assert.Equal("feed, look over, measure, photograph, prune, repot, unwire, wire", string.Join(", ", output.Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal) && !line.StartsWith("   ", StringComparison.Ordinal)).Select(line => line.Trim())));
    }

    [Fact]
    public void Without_a_day_in_the_file_it_says_how_to_name_one()
    {
        work.Write("b.grove", Plantings.Quiet + "task P1 prune on A in 2026-02\n");
        Assert.Contains("--on DATE", work.Run("calendar", "b.grove").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("--on DATE", work.Run("calendar", "b.grove", "--on", "2026-01-01").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_work_it_says_how_to_write_some_in_words_that_can_be_read()
    {
        work.Write("b.grove", Plantings.Quiet);
        var output = work.Run("calendar", "b.grove").Output;
        var task = output.ReplaceLineEndings(" ")[output.IndexOf("task R1", StringComparison.Ordinal)..].Trim();
        Assert.Equal(ExitStatus.Good, work.RunWithInput(Plantings.Quiet + task.Replace("  ", " ", StringComparison.Ordinal) + "\n", "check", "-").Status);
    }

    [Theory]
    [InlineData(Plantings.Quiet)]
    [InlineData(Plantings.Broken)]
    [InlineData(Year)]
    [InlineData("")]
    [InlineData("task \"\u0000\u202e<script>\" prune on A in 2027 \"\u001b[31m\"")]
    public void Json_is_as_its_schema_says(string text)
    {
        work.Write("one.grove", text);
        var answer = work.Run("calendar", "one.grove", "gone.grove", "--json");
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.True(Schema().Evaluate(Parse(answer)).IsValid, answer.Output);
        Assert.Equal("gone.grove", (string)JsonNode.Parse(answer.Output)!["unreadable"]![0]!["file"]!);
    }

    [Fact]
    public void Json_of_every_sample_is_as_its_schema_says_and_holds_every_task()
    {
        var answer = work.Run("calendar", Project.Path("samples"), "--json", "--on", "2026-11-01");
        Assert.True(Schema().Evaluate(Parse(answer)).IsValid);
        var plantings = JsonNode.Parse(answer.Output)!["plantings"]!.AsArray();
        Assert.True(plantings.Count >= 8);
        Assert.All(plantings, planting => Assert.Equal("2026-11-01", (string)planting!["day"]!));
    }

    [Fact]
    public void Json_tells_each_task_with_its_term_its_days_and_its_slack()
    {
        var tasks = JsonNode.Parse(work.Run("calendar", "a.grove", "--json", "--on", "2026-10-20").Output)!["plantings"]![0]!["tasks"]!.AsArray();
        Assert.Equal("P1 L1 U1 D1 R1 F1 N1 W1", string.Join(' ', tasks.Select(task => (string)task!["task"]!)));
        Assert.Equal("overdue overdue season year later later undated done", string.Join(' ', tasks.Select(task => (string)task!["term"]!)));
        var unwire = tasks[2]!;
        Assert.Equal(("2026-11-01", "2026-11-15", 14), ((string)unwire["earliest"]!, (string)unwire["latest"]!, (int)unwire["slackDays"]!));
        Assert.Equal("B", string.Join(' ', unwire["trunks"]!.AsArray().Select(name => (string)name!)));
        Assert.Equal("A B", string.Join(' ', tasks[5]!["trunks"]!.AsArray().Select(name => (string)name!)));
        Assert.Equal(234, (int)tasks[0]!["daysOver"]!);
        Assert.Equal(2, (int)tasks[1]!["turnsMissed"]!);
    }

    [Fact]
    public void A_calendar_for_a_telephone_is_written_beside_what_is_told_and_the_same_each_time()
    {
        var answer = work.Run("calendar", "a.grove", "--ics", "a.ics");
        Assert.Contains("Quiet corner", answer.Output, StringComparison.Ordinal);
        Assert.Equal("a.grove: 1 task has no date and is not in the calendar: N1.\n", answer.Errors);
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", work.Read("a.ics"), StringComparison.Ordinal);
        var poured = work.Run("calendar", "a.grove", "--ics", "-");
        Assert.Equal(work.Read("a.ics"), poured.Output);
        work.Write("b.grove", Year);
        Assert.Equal(ExitStatus.Good, work.Run("calendar", "a.grove", "b.grove", "--ics", "each/").Status);
        Assert.Equal(work.Read("a.ics"), work.Read("each/a.ics"));
        Assert.True(File.Exists(work["each/b.ics"]));
    }

    [Fact]
    public void A_calendar_without_an_event_is_not_written_and_that_is_said()
    {
        work.Write("b.grove", Plantings.Quiet);
        var answer = work.Run("calendar", "b.grove", "--ics", "b.ics");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.False(File.Exists(work["b.ics"]));
        Assert.Contains("nothing to write to b.ics", answer.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_timeline_is_the_one_that_draw_draws()
    {
        Assert.Equal(ExitStatus.Good, work.Run("calendar", "a.grove", "--timeline", "year.svg").Status);
        Assert.Equal(work.Run("draw", "a.grove", "--view", "timeline").Output, work.Read("year.svg"));
        work.Run("calendar", "a.grove", "--timeline", "year.png");
        Assert.Equal("PNG"u8.ToArray(), File.ReadAllBytes(work["year.png"])[1..4]);
        work.Write("b.grove", Year);
        work.Run("calendar", "a.grove", "b.grove", "--timeline", "years");
        Assert.Equal(work.Read("year.svg"), work.Read("years/b-timeline.svg"));
    }

    [Theory]
    [InlineData("--by", "week")]
    [InlineData("--by", "kind", "--json")]
    [InlineData("--ics", "-", "--json")]
    [InlineData("--ics", "-", "--output", "a.txt")]
    [InlineData("--ics", "x", "--output", "x")]
    [InlineData("--ics", "a.grove")]
    [InlineData("--output", "a.grove")]
    [InlineData("--timeline", "a.grove")]
    [InlineData("--timeline", "year.txt")]
    [InlineData("--on", "yesterday")]
    public void What_cannot_be_meant_so_is_refused_and_nothing_is_lost(params string[] options)
    {
        Assert.Equal(ExitStatus.Usage, work.Run(["calendar", "a.grove", .. options]).Status);
        Assert.Equal(Year, work.Read("a.grove"));
        Assert.Equal(["a.grove"], Directory.GetFileSystemEntries(work.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public void Times_that_contradict_each_other_fail_the_run_and_the_rest_is_told()
    {
        work.Write("b.grove", Year + "task X1 prune on A after 2027-05-01, before 2027-04-01\n");
        var answer = work.Run("calendar", "b.grove");
        Assert.Equal(ExitStatus.Findings, answer.Status);
        Assert.Contains("[cannot-fit]", answer.Errors, StringComparison.Ordinal);
        Assert.Contains("X1  prune on A: what is said of its time cannot all hold", answer.Output, StringComparison.Ordinal);
        Assert.Contains("R1  repot on all", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_native_program_writes_the_same_calendar_of_every_sample()
    {
        // The library makes some of its parts by their type, which a program compiled ahead of time may have left out.
        var program = Environment.GetEnvironmentVariable("GROVESPEC_PROGRAM");
        Assert.SkipWhen(string.IsNullOrEmpty(program), "GROVESPEC_PROGRAM names no native program; bash tests/run.sh makes one.");
        string[] words = ["calendar", Project.Path("samples"), work["a.grove"], "--ics", "-", "--on", "2026-11-01"];
        using var process = Process.Start(new ProcessStartInfo(program!, words) { RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = Encoding.UTF8 })!;
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        var answer = work.Run(words);
        Assert.Equal(answer.Output, output);
        Assert.Equal((int)answer.Status, process.ExitCode);
        Assert.Equal(answer.Errors, await errors);
    }

    /// <summary>The tasks told between two headings, in their order.</summary>
    private static string Under(string output, string heading, string? next)
    {
        var lines = output.Split('\n').SkipWhile(line => line != heading).Skip(1).TakeWhile(line => line != next);
        return string.Join(' ', lines.Where(line => line.StartsWith("    ", StringComparison.Ordinal) && line[4] != ' ').Select(line => line.Trim().Split(' ')[0]));
    }

    private static JsonElement Parse(Answer answer)
    {
        using var document = JsonDocument.Parse(answer.Bytes);
        return document.RootElement.Clone();
    }

    private static JsonSchema Schema() => JsonSchema.FromText(File.ReadAllText(Project.Path("docs/calendar.schema.json")));
}
