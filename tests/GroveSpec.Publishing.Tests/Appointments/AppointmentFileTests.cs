using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Publishing.Appointments;
using GroveSpec.Syntax.Text;
using NodaTime;
using Xunit;

namespace GroveSpec.Publishing.Tests.Appointments;

/// <summary>The rules are those of RFC 5545; its sections stand beside each check.</summary>
public sealed partial class AppointmentFileTests
{
    private const string Head = """
        planting "Row, of; \"three\" 🌲"
        habit group
        species zelkova-serrata
        container oval 400 x 260 x 40 mm
        site latitude 51 N, zone 8b, last frost 3 May, first frost 1 November
        viewed from 180 deg, at 1000 mm
        trunk A at -90, -20 mm diameter 30 mm height 300 mm
        trunk B at 0, 14 mm diameter 20 mm height 240 mm
        trunk C at 81, 18 mm diameter 12 mm height 150 mm

        """;

    private const string Work = """
        task W1 wire on B in late autumn 2026 with aluminium 3 mm, coil 50 deg
        task L1 look-over of W1 every 2 weeks until U1
        task U1 unwire of W1 6 to 8 weeks after W1
        task P1 prune on all in late winter 2027 "small cuts; leave the stubs, and seal"
        task M1 measure on all on 2027-06-28
        task F1 feed on all every 1 months, from 2027-01-31 to 2027-05-31
        task N1 photograph on all

        """;

    [Fact]
    public void Lines_end_with_carriage_return_and_line_feed_and_hold_at_most_75_octets_without_a_cut_character()
    {
        // Section 3.1: CRLF; fold at 75 octets. A line is strict UTF-8 for itself.
        var note = string.Concat(Enumerable.Repeat("🌲é漢", 90));
        var bytes = Written(Head + Work.Replace("small cuts", note, StringComparison.Ordinal));
        Assert.Contains(Lines(bytes), line => line.Contains(note, StringComparison.Ordinal));
        var strict = new UTF8Encoding(false, throwOnInvalidBytes: true);
        Assert.Equal("\r\n"u8.ToArray(), bytes[^2..]);
        var start = 0;
        for (var end = 0; end < bytes.Length; end++)
        {
            if (bytes[end] == '\n')
            {
                Assert.Equal((byte)'\r', bytes[end - 1]);
                Assert.InRange(end - 1 - start, 1, 75);
                strict.GetString(bytes, start, end - 1 - start);
                start = end + 1;
            }
            else
            {
                Assert.True(bytes[end] != '\r' || bytes[end + 1] == '\n');
            }
        }
    }

    [Fact]
    public void A_line_of_75_octets_is_one_and_one_of_76_is_two()
    {
        // Values.md F: 76 octets become 75, and a blank with one more.
        Assert.Equal(new string('x', 75) + "\r\n", Encoding.UTF8.GetString(ContentLines.Fold(new string('x', 75) + "\r\n")));
        Assert.Equal(new string('x', 75) + "\r\n x\r\n", Encoding.UTF8.GetString(ContentLines.Fold(new string('x', 76) + "\r\n")));

        // A character of three octets that would begin at the 74th goes into the next line whole.
        Assert.Equal(new string('x', 73) + "\r\n 漢\r\n", Encoding.UTF8.GetString(ContentLines.Fold(new string('x', 73) + "漢\r\n")));
        Assert.Equal(new string('x', 72) + "漢\r\n", Encoding.UTF8.GetString(ContentLines.Fold(new string('x', 72) + "漢\r\n")));
    }

    [Fact]
    public void The_file_and_each_event_have_what_the_standard_requires()
    {
        // Sections 3.6, 3.7.3, 3.7.4, 3.8.4.7, 3.8.7.2: PRODID and VERSION once; UID and DTSTAMP, in UTC, in every event.
        var lines = Lines(Head + Work);
        Assert.Equal("BEGIN:VCALENDAR", lines[0]);
        Assert.Equal("END:VCALENDAR", lines[^1]);
        Assert.Single(lines, "VERSION:2.0");
        Assert.Single(lines, line => line.StartsWith("PRODID:", StringComparison.Ordinal));
        var events = Events(lines);
        Assert.Equal(6, events.Count);
        Assert.All(events, one =>
        {
            Assert.Single(one, line => Uuid().IsMatch(line));
            Assert.Single(one, line => Stamp().IsMatch(line));
            Assert.Single(one, line => line.StartsWith("DTSTART;VALUE=DATE:", StringComparison.Ordinal));
            Assert.Single(one, line => line.StartsWith("DTEND;VALUE=DATE:", StringComparison.Ordinal));
            Assert.Single(one, line => line.StartsWith("SUMMARY:", StringComparison.Ordinal));
        });
        Assert.Equal(6, events.Select(one => one.Single(line => line.StartsWith("UID:", StringComparison.Ordinal))).Distinct().Count());
    }

    [Fact]
    public void An_event_ends_on_the_day_after_its_last_one()
    {
        // Sections 3.6.1 and 3.8.2.2: DTEND is not part of the event. The standard's own example of 28 June to 8 July ends on 9 July.
        var spanned = Event(Head + "task P1 prune on all from 2007-06-28 to 2007-07-08\n", "prune", new LocalDate(2007, 6, 1));
        Assert.Contains("DTSTART;VALUE=DATE:20070628", spanned);
        Assert.Contains("DTEND;VALUE=DATE:20070709", spanned);
        var day = Event(Head + "task M1 measure on all on 2027-12-31\n", "measure");
        Assert.Contains("DTSTART;VALUE=DATE:20271231", day);
        Assert.Contains("DTEND;VALUE=DATE:20280101", day);
    }

    [Fact]
    public void Text_is_escaped_as_the_standard_says()
    {
        // Section 3.3.11; the worked line of values.md F: a,b;c\ becomes a\,b\;c\\.
        var made = Event(Head + "task O1 other \"a,b;c\\\\\" on A on 2027-06-28\n", "O1");
        Assert.Contains(@"SUMMARY:a\,b\;c\\ on A (Row\, of\; ""three"" 🌲)", made);
    }

    [Fact]
    public void Turns_are_told_by_a_rule_that_ends_on_the_last_of_them()
    {
        // Section 3.3.10: UNTIL is inclusive, of the type of DTSTART, and stands without COUNT.
        var look = Event(Head + "task L1 look-over on B every 2 weeks, from 2026-11-15 to 2027-01-25\n", "look over");
        Assert.Contains("DTSTART;VALUE=DATE:20261115", look);
        Assert.Contains("DTEND;VALUE=DATE:20261116", look);
        Assert.Contains("RRULE:FREQ=WEEKLY;INTERVAL=2;UNTIL=20270124", look);
    }

    [Fact]
    public void Turns_at_the_end_of_months_are_told_by_their_days_since_a_rule_would_leave_some_months_out()
    {
        var feed = Event(Head + Work, "feed");
        Assert.Contains("DTSTART;VALUE=DATE:20270131", feed);
        Assert.DoesNotContain(feed, line => line.StartsWith("RRULE", StringComparison.Ordinal));
        Assert.Equal("20270131,20270228,20270331,20270430,20270531", string.Join(',', feed.Where(line => line.StartsWith("RDATE", StringComparison.Ordinal)).Select(line => line.Split(':')[1])));
    }

    [Fact]
    public void What_harms_when_it_is_missed_has_an_alarm_and_other_work_has_none()
    {
        // Section 3.6.6: a display alarm has ACTION, DESCRIPTION and TRIGGER.
        var unwire = Event(Head + Work, "unwire");
        Assert.Contains("BEGIN:VALARM", unwire);
        Assert.Contains("ACTION:DISPLAY", unwire);
        Assert.Contains("TRIGGER:-PT6H", unwire);

        // From 13 December to 25 January: 18 January at six in the evening is 36 days and 18 hours after its start.
        Assert.Contains("TRIGGER:P36DT18H", unwire);
        Assert.DoesNotContain("BEGIN:VALARM", Event(Head + Work, "prune"));
        Assert.DoesNotContain("BEGIN:VALARM", Event(Head + "task U1 unwire on B done 2026-10-01\n", "unwire"));
    }

    [Fact]
    public void Two_runs_give_the_same_bytes_and_a_moved_date_keeps_its_uid_and_raises_its_sequence()
    {
        Assert.Equal(Written(Head + Work), Written(Head + Work));
        var before = Event(Head + Work, "prune");
        var after = Event(Head + Work.Replace("late winter 2027", "early spring 2028", StringComparison.Ordinal), "prune", new LocalDate(2026, 10, 31));
        Assert.NotEqual(Value(before, "DTSTART;VALUE=DATE"), Value(after, "DTSTART;VALUE=DATE"));
        Assert.Equal(Value(before, "UID"), Value(after, "UID"));
        Assert.Equal(int.Parse(Value(before, "SEQUENCE"), System.Globalization.CultureInfo.InvariantCulture) + 1, int.Parse(Value(after, "SEQUENCE"), System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Two_plantings_of_one_name_in_one_calendar_share_no_uid()
    {
        var one = Assessed(Head + Work, new(2026, 10, 30));
        var uids = Lines(AppointmentFile.Write([one, one with { File = "other.grove" }])).Where(line => line.StartsWith("UID:", StringComparison.Ordinal)).ToList();
        Assert.Equal(12, uids.Count);
        Assert.Equal(12, uids.Distinct().Count());
        Assert.Equal(uids[..6], Lines(AppointmentFile.Write([one])).Where(line => line.StartsWith("UID:", StringComparison.Ordinal)));
    }

    [Fact]
    public void Overdue_work_stands_on_the_day_it_is_seen_from_and_says_so()
    {
        var late = Event(Head + "task P1 prune on all in 2026-02\n", "prune");
        Assert.Contains("DTSTART;VALUE=DATE:20261030", late);
        Assert.StartsWith("SUMMARY:overdue: prune on all", late.Single(line => line.StartsWith("SUMMARY", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("Its last day was 28 February 2026", Value(late, "DESCRIPTION"), StringComparison.Ordinal);
    }

    [Fact]
    public void Work_that_is_done_keeps_its_event_on_the_day_it_was_done()
    {
        var done = Event(Head + "task P1 prune on all in 2026-02 done 2026-02-14\n", "prune");
        Assert.Contains("DTSTART;VALUE=DATE:20260214", done);
        Assert.StartsWith("SUMMARY:done: prune on all", done.Single(line => line.StartsWith("SUMMARY", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_breaks_out_of_its_line()
    {
        var gen = Gen.String[Gen.Char["ab,;:\\\"\r\n\t\u0000\u0085\u2028🌲é漢\u202eBEGIN"], 0, 120];
        gen.Sample(
            note =>
            {
                var planting = Assessed(Head + "task P1 prune on all on 2027-06-28\n", new(2026, 10, 30));
                var task = planting.Planting.Tasks[0];
                var bytes = AppointmentFile.Write([planting with { Planting = planting.Planting with { Tasks = [task with { Note = new(note, task.Origin) }] } }]);
                var lines = Lines(bytes);
                Assert.Single(lines, "BEGIN:VEVENT");
                Assert.Single(lines, "END:VEVENT");
                Assert.All(lines, line => Assert.DoesNotContain(line, character => char.IsControl(character) && character != '\t'));
                Assert.All(lines, line => Assert.Matches("^[A-Z-]+[;:]", line));
            },
            iter: 300);
    }

    private static List<string> Event(string text, string kind, LocalDate? day = null) =>
        Assert.Single(Events(Lines(Written(text, day))), one => one.Any(line => line == $"CATEGORIES:{kind}" || line.StartsWith($"DESCRIPTION:{kind}:", StringComparison.Ordinal)));

    private static string Value(List<string> lines, string name) => lines.Single(line => line.StartsWith(name + ":", StringComparison.Ordinal))[(name.Length + 1)..];

    private static List<List<string>> Events(List<string> lines)
    {
        var events = new List<List<string>>();
        for (var at = 0; at < lines.Count; at++)
        {
            if (lines[at] == "BEGIN:VEVENT")
            {
                var end = lines.IndexOf("END:VEVENT", at);
                events.Add(lines[(at + 1)..end]);
            }
        }

        return events;
    }

    private static List<string> Lines(string text) => Lines(Written(text));

    private static List<string> Lines(byte[] bytes) =>
        [.. Encoding.UTF8.GetString(bytes).Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries)];

    private static byte[] Written(string text, LocalDate? day = null) => AppointmentFile.Write([Assessed(text, day ?? new(2026, 10, 30))]);

    private static Assessment Assessed(string text, LocalDate day) => Assessment.Of("row.grove", SourceText.FromText(text), new NoFiles(), day);

    [GeneratedRegex("^UID:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$")]
    private static partial Regex Uuid();

    [GeneratedRegex("^DTSTAMP:20261030T000000Z$")]
    private static partial Regex Stamp();
}
