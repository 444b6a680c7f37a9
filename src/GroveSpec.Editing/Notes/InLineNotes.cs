using System.Collections.Immutable;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Composition;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Times;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Notes;

/// <summary>Finds what is worth noting within lines: the diameter that a girth gives, how near the next trunk stands, and when work is due.</summary>
public static class InLineNotes
{
    /// <summary>The notes of a run of text.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="within">The run.</param>
    /// <returns>The notes in the order of the text.</returns>
    public static ImmutableArray<LineNote> Of(Assessment assessment, TextSpan within)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var notes = ImmutableArray.CreateBuilder<LineNote>();
        var byName = new Dictionary<string, TrunkState>(StringComparer.Ordinal);
        foreach (var trunk in assessment.State.Trunks)
        {
            byName.TryAdd(trunk.Name, trunk);
        }

        var gaps = new Lazy<Dictionary<string, (string Other, Length Gap)>>(() => NearestGaps(assessment.State));
        var dates = new Lazy<Dictionary<string, DatedTask>>(() => DatesByName(assessment.Planting));
        foreach (var statement in assessment.Tree.Statements)
        {
            if (statement is Statement.Task { Name: { } task } && statement.Span.End >= within.Start && statement.Span.Start <= within.End
                && dates.Value.TryGetValue(task.Text, out var dated) && DayNote(dated) is { } day)
            {
                notes.Add(new(statement.Span, day.Label, day.Tooltip));
            }

            if (statement is not Statement.Trunk { Name: { } name } trunk || statement.Span.End < within.Start || statement.Span.Start > within.End || !byName.TryGetValue(name.Text, out var state))
            {
                continue;
            }

            if (trunk.Clauses.OfType<Clause.Thickness>().FirstOrDefault() is { IsGirth: true } girth && state.Trunk.Diameter is { } diameter)
            {
                var said = LengthWording.Say(diameter.Value, assessment.Units);
                notes.Add(new(girth.Span, $"⌀ {said}", $"A girth is π times the diameter: this one gives a diameter of {said}."));
            }

            // Behind the line, so that the columns stay in line.
            if (gaps.Value.TryGetValue(name.Text, out var near))
            {
                var said = LengthWording.Say(near.Gap, assessment.Units);
                notes.Add(new(statement.Span, $"{said} to {near.Other}", $"{near.Other} is the nearest trunk: {said} from centre to centre."));
            }
        }

        notes.Sort(static (left, right) => left.Span.End.CompareTo(right.Span.End));
        return notes.ToImmutable();
    }

    private static Dictionary<string, DatedTask> DatesByName(Planting planting)
    {
        var dates = new Dictionary<string, DatedTask>(StringComparer.Ordinal);
        foreach (var dated in TaskDates.Of(planting))
        {
            dates.TryAdd(dated.Task.Name, dated);
        }

        return dates;
    }

    /// <summary>When work is due, where its line does not name the days itself.</summary>
    private static (string Label, string Tooltip)? DayNote(DatedTask dated)
    {
        if (dated.Window is null || TaskWords.IsOver(dated.Task) || dated.Task.Times.All(clause => clause is TimeClause.During { Moment: Moment.Day } or TimeClause.FromTo { Start: Moment.Day, End: Moment.Day }))
        {
            return null;
        }

        var slack = dated.Slack is { } days and > 0 ? $" It can be put off by {DayWording.Count(days)} from the first of them." : "";
        return (TaskWords.When(dated), $"{dated.Task.Name} is due {TaskWords.When(dated)}.{slack}");
    }

    private static Dictionary<string, (string Other, Length Gap)> NearestGaps(PlantingState state)
    {
        var gaps = new Dictionary<string, (string, Length)>(StringComparer.Ordinal);
        if (!Checker.IsJudged(state))
        {
            return gaps;
        }

        var standing = StandingTrunks.Of(state);
        Span<int> found = stackalloc int[1];
        for (var index = 0; index < standing.Count; index++)
        {
            if (standing.Near(index, Length.Largest, found) == 1)
            {
                gaps.TryAdd(standing.Trunks[index].Name, (standing.Trunks[found[0]].Name, standing.Sections[index].Centre.DistanceTo(standing.Sections[found[0]].Centre)));
            }
        }

        return gaps;
    }
}
