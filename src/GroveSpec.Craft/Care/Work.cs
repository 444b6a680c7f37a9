using System.Collections.Immutable;
using GroveSpec.Craft.Calendar;
using GroveSpec.Model.Tasks;
using NodaTime;

namespace GroveSpec.Craft.Care;

/// <summary>A task with the trunks and the species it is done to.</summary>
/// <param name="Dated">The task with its days.</param>
/// <param name="Trunks">The trunks, by name, each once, in the order of names; those that the file does not have are left out.</param>
/// <param name="IsOfAll">Whether the file says that it is done to all.</param>
/// <param name="Kinds">The species of these trunks, each once, in the order of names; the planting's own where there are no trunks.</param>
/// <param name="Restrained">Those of the trunks that their role holds back.</param>
public sealed record Work(DatedTask Dated, ImmutableArray<string> Trunks, bool IsOfAll, ImmutableArray<TreeKind> Kinds, ImmutableArray<string> Restrained)
{
    /// <summary>What is done.</summary>
    public TaskKind Kind => Dated.Task.Kind.Value;

    /// <summary>Whether it comes again and again.</summary>
    public bool Repeats => Dated.Task.Times.Any(clause => clause is Model.Times.TimeClause.Every);

    /// <summary>The days on which it may yet be done: its window, or each day of work that comes again. None when it is done, when it has no days, and when its window has no end.</summary>
    public ImmutableArray<DateInterval> ToCome { get; } = Coming(Dated);

    /// <summary>All its days: those on which it was done, and those to come.</summary>
    public ImmutableArray<DateInterval> AllDays => Dated.Task.Done.IsEmpty ? ToCome : [.. Dated.Task.Done.Select(done => new DateInterval(done.Value, done.Value)), .. ToCome];

    /// <summary>Whether it is done to a trunk that other work is done to as well.</summary>
    /// <param name="other">The other work.</param>
    /// <returns>True when both have a trunk in common.</returns>
    public bool SharesTrunkWith(Work other)
    {
        for (int mine = 0, theirs = 0; mine < Trunks.Length && theirs < other.Trunks.Length;)
        {
            var order = string.CompareOrdinal(Trunks[mine], other.Trunks[theirs]);
            if (order == 0)
            {
                return true;
            }

            mine += order < 0 ? 1 : 0;
            theirs += order > 0 ? 1 : 0;
        }

        return false;
    }

    private static ImmutableArray<DateInterval> Coming(DatedTask dated)
    {
        if (!dated.Repeats.IsEmpty)
        {
            return [.. dated.Repeats.Select(day => new DateInterval(day, day))];
        }

        var isOver = !dated.Task.Done.IsEmpty || dated.Task.Times.Any(clause => clause is Model.Times.TimeClause.Every);
        return !isOver && dated.Window is { Earliest: { } first, Latest: { } last } ? [new DateInterval(first, last)] : [];
    }
}
