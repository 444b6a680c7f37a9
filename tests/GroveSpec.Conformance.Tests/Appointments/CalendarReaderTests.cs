using System.Text;
using GroveSpec.Binding;
using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using GroveSpec.Craft.Calendar;
using GroveSpec.Publishing.Appointments;
using Ical.Net.DataTypes;
using NodaTime;
using NodaTime.Text;
using Xunit;

namespace GroveSpec.Conformance.Tests.Appointments;

/// <summary>The calendars that are written, read by three libraries that know nothing of each other: Ical.Net, ical.js and Debian's python3-vobject.</summary>
public sealed class CalendarReaderTests
{
    private const string Hostile = """
        planting "Comma, semi; \\slash \"quoted\" 🌲 漢字"
        habit group
        container oval 400 x 260 x 40 mm
        site latitude 51 N, zone 8b, last frost 3 May, first frost 1 November
        trunk A,1 at -90, -20 mm diameter 30 mm height 300 mm
        trunk é🌲 at 0, 14 mm diameter 20 mm height 240 mm
        trunk C at 81, 18 mm diameter 12 mm height 150 mm
        task a-1 other "BEGIN:VEVENT; \\n, end" on C on 2027-06-28 "first; second, third\\, 🌲🌲🌲 and so on until this line is far longer than seventy-five octets of UTF-8 can be 漢字漢字漢字"
        task b-2 feed on all every 1 months, from 2027-01-31 to 2027-12-31
        task c-3 look-over on C every 10 days, from 2027-01-05 to 2027-03-01
        task d-4 shelter on all from 2026-11-01 to 2027-03-31
        task e-5 prune on all after 2027-02-01
        task f-6 prune on all before 2027-02-01
        task g-7 photograph on all every 1 years, from 2028-02-29 to 2040-03-01
        task h-8 measure on all every 2 years, from 2027-05-01 to 2040-03-01

        """;

    [Fact]
    public void Three_readers_understand_the_work_of_every_sample_alike() => ReadAlike(SampleFile.All.Select(sample => Plates.AssessmentOfFile(sample.Path)));

    [Fact]
    public void Three_readers_understand_hostile_names_alike()
    {
        var read = ReadAlike([Plates.AssessmentOf("hostile.grove", Hostile)]);
        Assert.Equal(8, read.Count);
        var other = read.Single(one => one.Description.StartsWith("a-1", StringComparison.Ordinal));
        Assert.Equal("BEGIN:VEVENT; \\n, end on C (Comma, semi; \\slash \"quoted\" 🌲 漢字)", other.Summary);
        Assert.Contains("first; second, third\\, 🌲🌲🌲 and so on", other.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Line_ends_in_notes_survive_all_three_readers()
    {
        var planting = Plates.AssessmentOf("notes.grove", Hostile);
        var tasks = planting.Planting.Tasks.Select(task => task with { Note = new("one\ntwo, \t three\r\nfour; \\n \"five\"\n\nsix", task.Origin) });
        Assert.All(ReadAlike([planting with { Planting = planting.Planting with { Tasks = [.. tasks] } }]), one =>
            Assert.Contains("one\ntwo, \t three\nfour; \\n \"five\"\n\nsix", one.Description, StringComparison.Ordinal));
    }

    /// <summary>Reads a calendar with all three, holds them against each other and against the dates that were meant, and gives what they read.</summary>
    private static List<ReadEvent> ReadAlike(IEnumerable<Assessment> plantings)
    {
        OutsideProgram.Node.Require();
        OutsideProgram.Python.Require();
        var scripts = Repository.Path("tests", "calendar-readers");
        Assert.SkipUnless(Directory.Exists(Path.Combine(scripts, "node_modules", "ical.js")), "ical.js is not installed (npm ci in tests/calendar-readers)");
        Assert.SkipUnless(Directory.Exists("/usr/lib/python3/dist-packages/vobject"), "vobject is not installed (Debian: apt-get install python3-vobject)");
        Assessment[] read = [.. plantings];
        var bytes = AppointmentFile.Write([.. read]);
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, bytes);
            var own = ReadWithLibrary(Encoding.UTF8.GetString(bytes));
            Assert.Equal(own, ReadEvent.Parse(OutsideProgram.Node.Run([Path.Combine(scripts, "read.mjs"), file]).Output));
            Assert.Equal(own, ReadEvent.Parse(OutsideProgram.Python.Run([Path.Combine(scripts, "read.py"), file]).Output));
            Assert.Equal(read.SelectMany(Meant).Order(StringComparer.Ordinal), own.Select(one => $"{one.Days} {one.End}").Order(StringComparer.Ordinal));
            return own;
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static List<ReadEvent> ReadWithLibrary(string text) =>
    [
        .. Ical.Net.Calendar.Load(text)!.Events.Select(one => new ReadEvent(
            one.Uid!,
            one.Summary!,
            one.Description!,
            one.Categories.Single(),
            Iso(one.Start!),
            Iso(one.End!),
            string.Join(' ', one.GetOccurrences().Take(ReadEvent.MostTurns).Select(turn => Iso(turn.Period.StartTime))),
            one.Alarms.Count)),
    ];

    /// <summary>What the tasks of a planting are to say: the days of their turns and the day after the first event's last.</summary>
    private static IEnumerable<string> Meant(Assessment planting)
    {
        foreach (var entry in Agenda.Of(planting.Planting, planting.Date).Entries)
        {
            if (entry.Dated.Window is not { } window)
            {
                continue;
            }

            if (!entry.Dated.Repeats.IsEmpty)
            {
                Assert.False(entry.Dated.RepeatsGoOn);
                yield return $"{string.Join(' ', entry.Dated.Repeats.Take(ReadEvent.MostTurns).Select(Iso))} {Iso(entry.Dated.Repeats[0].PlusDays(1))}";
            }
            else if (entry.Term == AgendaTerm.Overdue)
            {
                yield return $"{Iso(planting.Date!.Value)} {Iso(planting.Date!.Value.PlusDays(1))}";
            }
            else
            {
                yield return window is { Earliest: { } first, Latest: { } last } ? $"{Iso(first)} {Iso(last.PlusDays(1))}" : $"{Iso(window.First)} {Iso(window.First.PlusDays(1))}";
            }
        }
    }

    private static string Iso(CalDateTime day) => Iso(new LocalDate(day.Year, day.Month, day.Day));

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
