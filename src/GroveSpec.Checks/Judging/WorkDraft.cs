using System.Collections.Immutable;
using GroveSpec.Craft.Care;
using GroveSpec.Model;
using GroveSpec.Syntax.Parsing;

namespace GroveSpec.Checks.Judging;

/// <summary>Makes the findings about work alike: where they are, and the remedy that accepts them.</summary>
internal static class WorkDraft
{
    /// <summary>A finding about a task.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="check">The check.</param>
    /// <param name="work">The work.</param>
    /// <param name="message">The sentence.</param>
    /// <param name="part">The part of the task that it is about; where null, what is said first of its time, or else its name.</param>
    /// <param name="trunk">The one trunk of the work that it is about; where null, all of them.</param>
    /// <returns>The finding, about no trunk by name where the work is done to all, to which the rule adds what was measured.</returns>
    public static Finding Of(CheckContext context, CheckDescription check, Work work, string message, Origin? part = null, string? trunk = null)
    {
        var task = work.Dated.Task;
        ImmutableArray<string> trunks = trunk is not null ? [trunk] : work.IsOfAll ? [] : [.. work.Trunks.Order(StringComparer.Ordinal)];
        return new Finding
        {
            Check = check,
            Severity = check.Severity,
            Place = context.Origins.Locate(part ?? (task.Times.IsEmpty ? task.Origin : task.Times[0].Origin)),
            Message = message,
            Trunks = trunks,
            Figures = [new Figure.Work(task.Name)],
            Remedies = Acceptance.Offer(context, check, trunks),
        };
    }

    /// <summary>A task by its name and kind.</summary>
    /// <param name="work">The work.</param>
    /// <returns>Such as "T1 (repot)".</returns>
    public static string Name(Work work) => $"{Wording.Name(work.Dated.Task.Name)} ({KnownWords.TaskKinds[(int)work.Kind]})";

    /// <summary>What it is done to.</summary>
    /// <param name="work">The work.</param>
    /// <returns>The trunks by name, or "all".</returns>
    public static string Trunks(Work work) => work.IsOfAll || work.Trunks.IsEmpty ? "all trunks" : Wording.List(work.Trunks);
}
