using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Binding.Names;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Craft.Wire;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Drawing.Wire;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;
using NodaTime.Text;

namespace GroveSpec.Editing.Explaining;

/// <summary>Says when a task is due and what it waits on.</summary>
internal static class TaskLines
{
    private const int MostDays = 4;
    private const int MostTrunks = 3;

    /// <summary>The days of a task, and where they come from.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="task">The task.</param>
    /// <returns>A line for each thing that is known.</returns>
    public static ImmutableArray<string> Of(Assessment assessment, PlantingTask task)
    {
        var planting = assessment.Planting;
        var lines = ImmutableArray.CreateBuilder<string>();
        var all = TaskDates.Of(planting);
        var dated = all.First(candidate => ReferenceEquals(candidate.Task, task));
        if (!task.Done.IsEmpty)
        {
            lines.Add($"Done on {string.Join(", ", task.Done.Select(done => Iso(done.Value)))}.");
        }

        if (dated.Window is { } window)
        {
            lines.Add(Say(window));
        }
        else
        {
            lines.Add($"It has no date: {TaskWords.Undated(dated)}.");
        }

        if (!dated.Repeats.IsEmpty)
        {
            var more = dated.Repeats.Length > MostDays || dated.RepeatsGoOn ? " and so on" : "";
            lines.Add($"Due on {string.Join(", ", dated.Repeats.Take(MostDays).Select(Iso))}{more}.");
        }

        // What is done no longer follows from what was planned.
        if (!TaskWords.IsOver(task))
        {
            lines.AddRange(TaskMoments.Of(planting, task, all).Select(moment => Reason(assessment, moment)).OfType<string>().Distinct());
        }

        if (!dated.WaitsOn.IsEmpty)
        {
            lines.Add($"It waits on {string.Join(", ", dated.WaitsOn)}.");
        }

        var followers = all.Where(other => other.WaitsOn.Contains(task.Name)).Select(other => other.Task.Name).ToList();
        if (followers.Count > 0)
        {
            lines.Add($"Waiting on it: {string.Join(", ", followers)}.");
        }

        if (task.Kind.Value == TaskKind.Wire)
        {
            lines.AddRange(Wires(assessment, task, all));
        }

        return lines.ToImmutable();
    }

    /// <summary>What wire each trunk takes, in short; the sheet of wire says all of it.</summary>
    private static IEnumerable<string> Wires(Assessment assessment, PlantingTask task, ImmutableArray<DatedTask> all)
    {
        var plans = WirePlans.Of(assessment.State, WorkList.Of(assessment.Planting, all)).Where(plan => ReferenceEquals(plan.Term.Wire.Dated.Task, task)).ToList();
        foreach (var plan in plans.Take(MostTrunks))
        {
            var said = WireWords.Of(plan, assessment.Units).Where(line => line.Label is "Wire" or "Cut" or "Wind").Select(line => line.Text);
            yield return $"On {plan.Trunk.Name}: {string.Join(" ", said)}";
        }

        if (plans.Count > MostTrunks)
        {
            yield return $"And {plans.Count - MostTrunks} trunks more.";
        }
    }

    /// <summary>What a moment comes to; null for a day, which says it itself.</summary>
    private static string? Reason(Assessment assessment, TaskMoment moment)
    {
        var place = assessment.Origins.Locate(moment.Clause.Origin);
        var said = assessment.TextOf(place.File).Slice(place.Span);
        var it = moment.Clause is TimeClause.FromTo ? MomentWords(moment.Moment) + " " : "";
        return moment switch
        {
            { Moment: Moment.Day } => null,
            { Days: { } days } => $"{said}: {(it.Length > 0 ? it + "is " : "")}{DayWords.Range(days.Start, days.End)}.",
            { Onset: { } onset } => $"{said}: {it}begins {DayWords.Range(onset.Days.Start, onset.Days.End)}. {onset.Account}",
            { Other.Window: null } => $"{said}: {moment.Other.Task.Name} has no date.",
            { Other: { } other } => $"{said}: {other.Task.Name} {(TaskWords.IsOver(other.Task) ? "was" : "is due")} {TaskWords.When(other)}.",
            { Moment: Moment.OfTask of } => $"{said}: there is no task {of.Task}.",
            _ => $"{said}: the site or the species does not tell when {MomentWords(moment.Moment)} comes.",
        };
    }

    private static string MomentWords(Moment moment) => moment switch
    {
        Moment.Month month => $"{DayWords.Month(month.Value.Month)} {month.Value.Year}",
        Moment.Year year => year.Number.ToString(CultureInfo.InvariantCulture),
        Moment.SeasonOfYear season => string.Create(CultureInfo.InvariantCulture, $"{(season.Part == SeasonPart.Whole ? "" : $"{Words.SeasonParts[(int)season.Part - 1]} ")}{Words.Seasons[(int)season.Season]} {season.Number}"),
        Moment.StageOfYear stage => string.Create(CultureInfo.InvariantCulture, $"{Words.Stages[(int)stage.Stage]} {stage.Number}"),
        _ => "it",
    };

    private static string Say(TaskWindow window) => (window.Earliest, window.Latest) switch
    {
        ({ } from, { } to) when from == to => $"On {Iso(from)}.",
        ({ } from, { } to) => string.Create(CultureInfo.InvariantCulture, $"From {Iso(from)} to {Iso(to)}, {Period.DaysBetween(from, to) + 1} days."),
        ({ } from, null) => $"From {Iso(from)} on.",
        (null, { } to) => $"Until {Iso(to)}.",
        _ => "At any time.",
    };

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
