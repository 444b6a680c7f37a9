using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Craft.Calendar;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;
using Duration = Ical.Net.DataTypes.Duration;
using Period = NodaTime.Period;

namespace GroveSpec.Publishing.Appointments;

/// <summary>
/// Writes the dated tasks of plantings as iCalendar (RFC 5545), as telephones and calendar programs read it: an all-day event for
/// each, repeats by rule, and an alarm for work that harms when it is missed.
/// </summary>
public static class AppointmentFile
{
    /// <summary>A day of the month that every month has up to this one.</summary>
    private const int LastCommonDay = 28;

    private static readonly TaskKind[] NotToBeMissed = [TaskKind.Unwire, TaskKind.LookOver, TaskKind.Shelter, TaskKind.RemoveSacrifice];

    /// <summary>Writes them.</summary>
    /// <param name="plantings">The plantings, each judged on the day it is seen from.</param>
    /// <returns>
    /// The file in UTF-8 with its lines as the standard has them: the same for the same plantings on the same day. An event's UID
    /// follows from the names of the planting and the task alone, and so stays when a date moves; its SEQUENCE rises with the day.
    /// A task without a date has no event.
    /// </returns>
    public static byte[] Write(ImmutableArray<Assessment> plantings)
    {
        var calendar = new Ical.Net.Calendar { ProductId = "-//GroveSpec//The tree's year//EN", Version = "2.0" };
        calendar.AddProperty("X-WR-CALNAME", AppointmentText.Harmless(string.Join(", ", plantings.Select(AppointmentText.NameOf))));
        var taken = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var planting in plantings)
        {
            foreach (var entry in Agenda.Of(planting.Planting, planting.Date).Entries)
            {
                if (entry.Dated.Window is not null)
                {
                    calendar.Events.Add(EventOf(planting, entry, UidOf(planting, entry.Dated.Task, taken)));
                }
            }
        }

        return ContentLines.Fold(new CalendarSerializer().SerializeToString(calendar)!);
    }

    private static CalendarEvent EventOf(Assessment planting, AgendaEntry entry, string uid)
    {
        var (first, last) = DaysOf(entry, planting.Date);
        var made = new CalendarEvent
        {
            Uid = uid,
            DtStamp = Stamp(planting.Date ?? new LocalDate(1970, 1, 1)),
            Sequence = planting.Date is { } seen ? Math.Max(0, Period.DaysBetween(new LocalDate(2000, 1, 1), seen)) : 0,
            Summary = AppointmentText.Summary(planting, entry),
            Description = AppointmentText.Description(planting, entry),
            Start = Day(first),
            End = Day(last.PlusDays(1)),
            Transparency = TransparencyType.Transparent,
        };
        made.Categories.Add(AppointmentText.Category(entry.Dated.Task));
        Repeat(made, entry);
        if (entry.Term != AgendaTerm.Done && NotToBeMissed.Contains(entry.Dated.Task.Kind.Value))
        {
            AddAlarms(made, first, last);
        }

        return made;
    }

    /// <summary>What is overdue stands on the day it is seen from, so that it is seen; a window with one end known is that day.</summary>
    private static (LocalDate First, LocalDate Last) DaysOf(AgendaEntry entry, LocalDate? seen)
    {
        if (!entry.Dated.Repeats.IsEmpty)
        {
            return (entry.Dated.Repeats[0], entry.Dated.Repeats[0]);
        }

        var window = entry.Dated.Window!.Value;
        return entry.Term == AgendaTerm.Overdue && seen is { } day ? (day, day)
            : window is { Earliest: { } earliest, Latest: { } latest } ? (earliest, latest)
            : (window.First, window.First);
    }

    private static void Repeat(CalendarEvent made, AgendaEntry entry)
    {
        var turns = entry.Dated.Repeats;
        if (turns.IsEmpty || (turns.Length == 1 && !entry.Dated.RepeatsGoOn))
        {
            return;
        }

        var every = entry.Dated.Task.Times.OfType<TimeClause.Every>().First();
        if (every.Unit is TimeUnit.Months or TimeUnit.Years && turns[0].Day > LastCommonDay)
        {
            // A rule leaves out the months that have no such day; here the work moves to their last day. The first day stands among them
            // as well, since some readers show only those that are listed; the standard has a day that comes twice count once (3.8.5.2).
            foreach (var turn in turns)
            {
                made.RecurrenceDates.Add(Day(turn));
            }

            return;
        }

        var rule = new RecurrenceRule(FrequencyOf(every.Unit), Math.Max(1, every.Count));
        if (!entry.Dated.RepeatsGoOn)
        {
            rule.Until = Day(turns[^1]);
        }

        made.RecurrenceRule = rule;
    }

    private static FrequencyType FrequencyOf(TimeUnit unit) => unit switch
    {
        TimeUnit.Days => FrequencyType.Daily,
        TimeUnit.Weeks => FrequencyType.Weekly,
        TimeUnit.Months => FrequencyType.Monthly,
        _ => FrequencyType.Yearly,
    };

    /// <summary>On the evening before it begins, and in a long window again in the evening a week before its last day.</summary>
    private static void AddAlarms(CalendarEvent made, LocalDate first, LocalDate last)
    {
        const int LongWindowInDays = 14;
        const int DaysAhead = 7;
        made.Alarms.Add(AlarmOf(made, new Trigger(new Duration(hours: -6))));
        var length = Period.DaysBetween(first, last);
        if (length >= LongWindowInDays)
        {
            // Counted from the start: what is related to the end is not written so by the library.
            made.Alarms.Add(AlarmOf(made, new Trigger(new Duration(days: length - DaysAhead, hours: 18))));
        }
    }

    private static Alarm AlarmOf(CalendarEvent made, Trigger trigger) => new() { Action = AlarmAction.Display, Description = made.Summary, Trigger = trigger };

    /// <summary>A UUID of version 8 (RFC 9562) made of the names; a second task of the same names in another file gets another.</summary>
    private static string UidOf(Assessment planting, PlantingTask task, Dictionary<string, int> taken)
    {
        var key = $"{AppointmentText.NameOf(planting)}\n{task.Name}";
        var before = taken.GetValueOrDefault(key);
        taken[key] = before + 1;
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes(before == 0 ? key : $"{key}\n{before}")).AsSpan(0, 16).ToArray();
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true).ToString("D");
    }

    private static CalDateTime Day(LocalDate day) => new(day.Year, day.Month, day.Day);

    private static CalDateTime Stamp(LocalDate day) => new(day.Year, day.Month, day.Day, 0, 0, 0, CalDateTime.UtcTzId);
}
