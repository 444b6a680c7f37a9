using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace GroveSpec.Cli.Tests;

/// <summary>Inputs meant to hurt: each ends as documented, in messages, and with output that is well-formed.</summary>
public sealed class HostileInputTests : IDisposable
{
    private const string Head = "planting \"P\"\nhabit group\ncontainer oval 400 x 300 x 40 mm\nviewed from 180 deg, at 900 mm\n";

    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    public static TheoryData<string, string> Rows() => new()
    {
        { "empty", "" },
        { "only a byte order mark", "\ufeff" },
        { "only comments", "# one\n# two" },
        { "returns only", Head.Replace('\n', '\r') + "trunk A at 1, 2 mm diameter 20 mm height 200 mm\r" },
        { "mixed line ends", "planting \"P\"\r\ntrunk A at 1, 2 mm\rtrunk B at 40, 7 mm\n\r\n" },
        { "nulls", "planting \"\0\"\ntrunk A\0 at 1, 2 mm\n" },
        { "a text never closed", Head + "concept \"no end\ntrunk A at 1, 2 mm diameter 20 mm height 200 mm\n" },
        { "open braces", Head + "role x " + new string('{', 100_000) },
        { "numbers", Head + string.Join('\n', "1e999 -0 0 1/0 NaN Infinity 1,5 1.5.2 ١٢ 0x10 -5".Split(' ').Select((number, index) => $"trunk N{index} at {number} mm, 3 mm diameter {number} mm height {number} mm lean 400 deg toward 10 deg")) },
        { "a long number", Head + "trunk A at 9" + new string('9', 400) + " mm, 3 mm diameter 20 mm\n" },
        { "girth in miles", Head + "trunk A at 1, 2 mm girth 3 miles height 12 MM\n" },
        { "all at one point", Head + Many(40, _ => "1, 2 mm") },
        { "a nanometre apart", Head + "trunk A at 0, 0 mm diameter 10 mm height 90 mm\ntrunk B at 0.000001, 0 mm diameter 20 mm height 150 mm\n" },
        { "far away", Head + Many(3, index => $"{index}000000000000, {index}000000000000 mm") },
        { "in line far away", Head + Many(3, index => $"{900000000 + (index * 40)}, {900000000 + (index * 40)} mm") },
        { "words as names", Head + "trunk trunk at 1, 2 mm diameter 20 mm\ntrunk at at 40, 2 mm diameter 12 mm\n" },
        { "names that look alike", Head + "trunk \u00e9 at 1, 2 mm diameter 20 mm\ntrunk e\u0301 at 40, 2 mm diameter 12 mm\ntrunk E at 80, -20 mm\n" },
        { "names that turn", Head + "trunk \u202eA at 1, 2 mm diameter 20 mm\ntrunk B\u200dC at 40, 2 mm diameter 12 mm\ntrunk 😀 at 80, -20 mm diameter 9 mm\n" },
        { "a long name", Head + "trunk " + new string('n', 10_000) + " at 1, 2 mm diameter 20 mm height 200 mm\n" },
        { "twice named", Head + "trunk A at 1, 2 mm\ntrunk A at 40, 2 mm\nrole r { }\nrole r { }\ntask W feed on all on 2027-01-01\ntask W feed on all on 2027-01-01\n" },
        { "a circle of tasks", Head + string.Concat(Enumerable.Range(0, 100).Select(index => $"task T{index} feed on all after T{(index + 1) % 100}\n")) },
        { "dates", Head + "task A feed on all on 2027-02-30\ntask B feed on all on 0000-01-01\ntask C feed on all on 99999-01-01\ntask D feed on all every 0 days\ntask E feed on all every 1 day until 9999-12-31\nsite latitude 91 N, last frost 29 February, first frost 1 January\n" },
        { "used files", Head + "use \"../../secret\"\nuse \"/etc/passwd\"\nuse \"one.grove\"\nuse \"C:\\\\x.grove\"\nuse \"file:///etc/passwd\"\nuse \"https://example.org/x\"\nuse \".\"\n" },
        { "markup", "planting \"<script>alert(1)</script>]]>--><svg onload=x>&#x0;\"\nconcept \"javascript:x =HYPERLINK(1) @SUM \u001b[31m \\\\\"\ntrunk A at 1, 2 mm diameter 20 mm height 200 mm\n" },
        { "marks", "planting \"a" + new string('\u0301', 5000) + "\"\ntrunk A at 1, 2 mm diameter 20 mm height 200 mm\n" },
        { "accept", Head + "accept three-in-line X Y Z because \"\"\naccept nothing A because \"r\"\ntolerance even-gaps 0 %\ntolerance even-gaps -5 %\ntolerance even-gaps 1000000000 deg\n" },
        { "tapes", Head + Many(4, index => $"{index * 31}, {index * 17} mm") + "tape T0 to T0 5 mm\ntape T0 to T1 0 mm\ntape T1 to T2 900 mm\ntape T0 to T2 1 mm\ntrunk Z diameter 9 mm\ntape Z to T0 10 mm\n" },
        { "readings", Head + "trunk A at 1, 2 mm diameter 20 mm raised 2030\n" + string.Concat(Enumerable.Repeat("measured 2027-01-01 {\n A diameter 5 mm\n}\n", 1000)) },
        { "bytes that are no text", Head + "trunk \uD800A at 1, 2 mm\n" },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_command_ends_well_and_what_it_writes_is_well_formed(string row, string text)
    {
        Assert.NotEmpty(row);
        work.Write("a.grove", text);
        foreach (var form in new[] { "text", "lines" })
        {
            var answer = work.Run("check", "a.grove", "--as", form);
            Assert.True(answer.Status is ExitStatus.Good or ExitStatus.Findings, answer.Errors);
            Assert.DoesNotContain(answer.Output, letter => (char.IsControl(letter) && letter != '\n') || letter is >= '\u202a' and <= '\u202e' or '\u200d');
            Assert.Empty(answer.Errors);
        }

        foreach (var form in new[] { "json", "sarif" })
        {
            using var document = JsonDocument.Parse(work.Run("check", "a.grove", "--as", form).Bytes);
            Assert.Equal(JsonValueKind.Object, document.RootElement.ValueKind);
        }

        foreach (var view in new[] { "plan", "front", "timeline", "wiring" })
        {
            var answer = work.Run("draw", "a.grove", "--view", view);
            Assert.True(answer.Status is ExitStatus.Good or ExitStatus.Findings, answer.Errors);
            Assert.DoesNotContain("<script", answer.Output, StringComparison.OrdinalIgnoreCase);
            Assert.NotNull(XDocument.Parse(answer.Output).Root);
        }

        var book = work.Run("book", "a.grove");
        Assert.True(book.Status is ExitStatus.Good or ExitStatus.Findings, book.Errors);
        Assert.DoesNotContain("<script>alert", book.Output, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<svg onload", book.Output, StringComparison.OrdinalIgnoreCase);

        foreach (var order in new[] { "day", "trunk", "kind" })
        {
            var told = work.Run("calendar", "a.grove", "--by", order, "--on", "2027-05-01");
            Assert.True(told.Status is ExitStatus.Good or ExitStatus.Findings, told.Errors);
            Assert.DoesNotContain(told.Output, letter => char.IsControl(letter) && letter != '\n');
        }

        var appointments = work.Run("calendar", "a.grove", "--ics", "-", "--on", "2027-05-01");
        Assert.True(appointments.Status is ExitStatus.Good or ExitStatus.Findings, appointments.Errors);
        Assert.DoesNotContain(appointments.Output, letter => char.IsControl(letter) && letter is not ('\r' or '\n' or '\t'));

        var wires = work.Run("wiring", "a.grove");
        Assert.True(wires.Status is ExitStatus.Good or ExitStatus.Findings, wires.Errors);
        Assert.DoesNotContain(wires.Output, letter => (char.IsControl(letter) && letter != '\n') || letter is >= '\u202a' and <= '\u202e');

        foreach (var command in new string[][] { ["stand"], ["survey"], ["fronts"], ["ground", "--diameter", "9mm"], ["nudge", "--reach", "4mm"], ["thin", "--keep", "1-3"] })
        {
            var told = work.Run([.. command, "a.grove"]);
            Assert.True(told.Status is ExitStatus.Good or ExitStatus.Findings, told.Errors);
            Assert.DoesNotContain(told.Output, letter => (char.IsControl(letter) && letter != '\n') || letter is >= '\u202a' and <= '\u202e' or '\u200d');
            using var described = JsonDocument.Parse(work.Run([.. command, "a.grove", "--json"]).Bytes);
            Assert.Equal(JsonValueKind.Object, described.RootElement.ValueKind);
            ExpectPicture(work.Run([.. command, "a.grove", "--picture", "-"]), described.RootElement.GetProperty("plantings"));
        }

        var tidied = work.Run("tidy", "a.grove");
        Assert.True(tidied.Status is ExitStatus.Good or ExitStatus.Findings, tidied.Errors);
        File.WriteAllBytes(work["b.grove"], tidied.Bytes);
        Assert.Equal(tidied.Bytes, work.Run("tidy", "b.grove").Bytes);
    }

    [Theory]
    [InlineData("word")]
    [InlineData("line")]
    [InlineData("lines")]
    [InlineData("comment")]
    public void Ten_million_characters_end_in_a_message_and_little_memory(string what)
    {
        const int Size = 10_000_000;
        work.Write("a.grove", what switch
        {
            "word" => new string('w', Size),
            "line" => string.Concat(Enumerable.Repeat("trunk A ", Size / 8)),
            "lines" => string.Concat(Enumerable.Repeat("trunk A1\n", 1_000_000)),
            _ => "#" + new string('c', Size),
        });
        var answer = work.Run("check", "a.grove", "--as", "lines");
        Assert.True(answer.Status is ExitStatus.Good or ExitStatus.Findings, answer.Errors);
        Assert.InRange(answer.Output.Count(letter => letter == '\n'), 1, 5_000);
        Assert.True(answer.Bytes.Length < 2_000_000, $"{answer.Bytes.Length} bytes");
    }

    [Fact]
    public void Bytes_of_every_kind_are_read()
    {
        byte[][] texts =
        [
            [0xC0, 0xAF, 0xE0, 0x80, 0x80],
            [0xED, 0xA0, 0x80],
            [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("planting \"P\"\n")],
            [.. Enumerable.Range(0, 256).Select(value => (byte)value)],
        ];
        foreach (var bytes in texts)
        {
            File.WriteAllBytes(work["a.grove"], bytes);
            Assert.True(work.Run("check", "a.grove").Status is ExitStatus.Good or ExitStatus.Findings);
            Assert.NotEqual(ExitStatus.Files, work.Run("draw", "a.grove").Status);
        }
    }

    /// <summary>A picture is drawn where the report has something to tell, and where it has not, it is said why there is none.</summary>
    private static void ExpectPicture(Answer answer, JsonElement plantings)
    {
        Assert.True(answer.Status is ExitStatus.Good or ExitStatus.Findings, answer.Errors);
        var obstacle = plantings.EnumerateArray().Select(planting => planting.TryGetProperty("obstacle", out var told) ? told.GetString() : null).SingleOrDefault();
        if (plantings.GetArrayLength() == 1 && obstacle is null)
        {
            Assert.Equal("svg", XDocument.Parse(answer.Output).Root!.Name.LocalName);
            Assert.DoesNotContain("<script", answer.Output, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("no picture was drawn", answer.Errors, StringComparison.Ordinal);
        }
        else
        {
            Assert.Empty(answer.Output);
            Assert.True(obstacle is null ? answer.Status == ExitStatus.Findings : answer.Errors.Contains("a.grove: no picture was drawn. ", StringComparison.Ordinal), answer.Errors);
        }
    }

    private static string Many(int trunks, Func<int, string> place) =>
        string.Concat(Enumerable.Range(0, trunks).Select(index => $"trunk T{index} at {place(index)} diameter {10 + (index * 3)} mm height {100 + (index * 30)} mm\n"));
}
