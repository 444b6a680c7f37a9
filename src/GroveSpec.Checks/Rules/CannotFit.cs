using GroveSpec.Craft.Calendar;

namespace GroveSpec.Checks.Rules;

/// <summary>Times of tasks that contradict each other: each smallest set of statements that leaves no days.</summary>
internal sealed class CannotFit : IRule
{
    private const int MostRelated = 12;

    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "cannot-fit",
        Severity = Severity.Error,
        Meaning = "What is said of the times of tasks cannot all hold at once.",
        Explanation = "The tasks wait on each other, or on days of the year, in a way that leaves no day for one of them. Only what takes part is marked: change any one of the marked places, and the others have days. A task that was done stands on its true day, so what follows from it may no longer fit the plan.",
        Source = "R. Dechter, I. Meiri and J. Pearl, Temporal constraint networks, Artificial Intelligence 49 (1991)",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        if (context.Planting.Tasks.IsEmpty)
        {
            yield break;
        }

        foreach (var conflict in context.Reckoning.Conflicts)
        {
            // One statement alone, such as a span that ends before it starts, is told where it is read.
            if (conflict.Statements.Length > 1)
            {
                yield return Told(context, conflict);
            }
        }
    }

    private Finding Told(CheckContext context, TaskConflict conflict)
    {
        var names = conflict.Statements.Select(statement => statement.Task.Name).Distinct(StringComparer.Ordinal).ToList();
        var (_, last) = conflict.Statements[^1];
        var days = conflict.DaysShort == 1 ? "1 day" : $"{conflict.DaysShort} days";
        var whose = names.Count == 1 ? $"What is said of the time of {Wording.Name(names[0])}" : $"What is said of the times of {Wording.List(names)}";
        return new Finding
        {
            Check = Description,
            Severity = Description.Severity,
            Place = context.Origins.Locate(last),
            Message = $"{whose} cannot all hold: it is {days} too tight. Change one of the {conflict.Statements.Length} things said by {days} or more.",
            Measured = conflict.DaysShort,
            Unit = "days",
            Related = [.. conflict.Statements.SkipLast(1).TakeLast(MostRelated).Select(statement => new RelatedPlace(context.Origins.Locate(statement.Origin), $"said of {Wording.Name(statement.Task.Name)}"))],
        };
    }
}
