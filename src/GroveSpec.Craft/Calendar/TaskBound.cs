using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>What one clause of a task's time leaves of the calendar.</summary>
/// <param name="Clause">The clause.</param>
/// <param name="Earliest">The first day; null where it sets none.</param>
/// <param name="Latest">The last day; null where it sets none.</param>
public readonly record struct TaskBound(TimeClause Clause, LocalDate? Earliest, LocalDate? Latest)
{
    /// <summary>Whether the clause names a stage of the tree's year, so that its days follow the tree and not the calendar.</summary>
    public bool NamesStage => TaskDates.MomentsOf(Clause) is (Moment.StageOfYear, _) or (_, Moment.StageOfYear);
}
