using System.Collections.Immutable;
using GroveSpec.Binding;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using GroveSpec.Syntax.Text;
using NodaTime;
using NodaTime.Text;

namespace GroveSpec.Editing.Placing;

/// <summary>Writes into the text by how many days the work of a task was moved by hand. What it said by season or stage it then says by date.</summary>
public static class TaskPlacing
{
    private const int FarthestDays = 36_525;

    /// <summary>Moves the window of a task.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="name">The task.</param>
    /// <param name="days">By how many days, negative to earlier; no more than a hundred years.</param>
    /// <returns>The edits of the clauses that set its days; a refusal where it is done, where only other tasks set them, or where none does.</returns>
    public static Placement Move(Assessment assessment, string name, int days)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (assessment.Planting.Tasks.FirstOrDefault(task => task.Name == name) is not { } task)
        {
            return Placement.Refuse($"There is no task {name} in this text any more.");
        }

        if (WhyNot(task) is { } why)
        {
            return Placement.Refuse(why);
        }

        if (Math.Abs((long)days) > FarthestDays)
        {
            return Placement.Refuse($"{name} would be moved by more than a hundred years.");
        }

        var edits = ImmutableArray.CreateBuilder<TextEdit>();
        var isFreed = false;
        foreach (var bound in TaskBounds.Of(assessment.Planting, task))
        {
            if (Words(bound, days) is not { } words)
            {
                continue;
            }

            var place = assessment.Origins.Locate(bound.Clause.Origin);
            if (words != assessment.TextOf(place.File).Slice(place.Span))
            {
                edits.Add(new(place, words));
            }

            isFreed |= bound.NamesStage;
        }

        if (edits.Count == 0 && days != 0)
        {
            return Placement.Refuse(task.Times.IsEmpty
                ? $"{name} says no time yet: write one into its line first."
                : $"{name} follows other work: move that, or change its own line.");
        }

        var said = string.Join(", ", edits.Select(edit => edit.NewText));
        return new(
            days == 0 ? [] : edits.ToImmutable(),
            $"{name} {(days == 0 ? "stays where it is" : said)}{(isFreed && days != 0 ? ", by the calendar now and no longer by the tree’s year" : "")}",
            IsRefused: false,
            default);
    }

    private static string? WhyNot(PlantingTask task) =>
        TaskWords.IsOver(task) ? $"{task.Name} is done: its day is the one on which it was done."
        : !task.Done.IsEmpty ? $"{task.Name} was done already: its next turns are counted from that day."
        : task.Kind.Value == TaskKind.Sacrifice && !task.Times.Any(clause => clause is TimeClause.FromTo) ? $"{task.Name} is left to grow: write from when to when into its line first."
        : null;

    /// <summary>A clause with its days moved; null for one that sets none itself.</summary>
    private static string? Words(TaskBound bound, int days) => (bound.Clause, Shift(bound.Earliest, days), Shift(bound.Latest, days)) switch
    {
        (TimeClause.During, { } from, { } to) when from == to => $"on {Iso(from)}",
        (TimeClause.During, { } from, { } to) => $"from {Iso(from)} to {Iso(to)}",
        (TimeClause.FromTo, { } from, { } to) => $"from {Iso(from)} to {Iso(to)}",
        (TimeClause.FromTo { End: null }, { } from, null) => $"from {Iso(from)}",
        (TimeClause.After, { } from, _) => $"after {Iso(from.PlusDays(-1))}",
        (TimeClause.Before, _, { } to) => $"before {Iso(to.PlusDays(1))}",
        (TimeClause.Until, _, { } to) => $"until {Iso(to)}",
        _ => null,
    };

    private static LocalDate? Shift(LocalDate? day, int days)
    {
        const int FirstYear = 200;
        const int LastYear = 9_800;
        return day is { } known && known.Year is > FirstYear and < LastYear ? known.PlusDays(days) : null;
    }

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
