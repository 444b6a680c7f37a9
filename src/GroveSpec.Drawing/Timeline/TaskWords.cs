using System.Collections.Immutable;
using GroveSpec.Craft.Calendar;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;

namespace GroveSpec.Drawing.Timeline;

/// <summary>Tasks and the tree's year in words, as plates and tables say them. Text from the file comes through as it is.</summary>
public static class TaskWords
{
    /// <summary>What is done.</summary>
    /// <param name="task">The task.</param>
    /// <returns>A verb such as "look over"; the grower's own words for another kind.</returns>
    public static string Kind(PlantingTask task) => task.Kind.Value switch
    {
        TaskKind.Wire => "wire",
        TaskKind.Unwire => "unwire",
        TaskKind.LookOver => "look over",
        TaskKind.Prune => "prune",
        TaskKind.Pinch => "pinch",
        TaskKind.Disbud => "disbud",
        TaskKind.Defoliate => "defoliate",
        TaskKind.Sacrifice => "sacrifice",
        TaskKind.RemoveSacrifice => "remove sacrifice",
        TaskKind.Repot => "repot",
        TaskKind.RootPrune => "root-prune",
        TaskKind.Feed => "feed",
        TaskKind.Shelter => "shelter",
        TaskKind.Graft => "graft",
        TaskKind.Seal => "seal",
        TaskKind.Measure => "measure",
        TaskKind.Photograph => "photograph",
        _ => string.IsNullOrWhiteSpace(task.OtherKind) ? "other" : task.OtherKind,
    };

    /// <summary>What a task is done to; of a task that looks after another, what that one is done to.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="task">The task.</param>
    /// <returns>Names of trunks, "all", or "role" and its name; empty where the file does not say.</returns>
    public static ImmutableArray<string> Target(Planting planting, PlantingTask task)
    {
        // Eight steps are more than any chain that is meant, and end a circle.
        for (var step = 0; step < 8; step++)
        {
            switch (task.Target)
            {
                case TaskTarget.OnTrunks on:
                    return [.. on.Names.Select(name => name.Value)];
                case TaskTarget.OnAll:
                    return ["all"];
                case TaskTarget.OnRole role:
                    return ["role " + role.Name.Value];
                case TaskTarget.OfTask of when planting.Tasks.FirstOrDefault(other => other.Name == of.Name.Value) is { } other && other != task:
                    task = other;
                    continue;
                default:
                    return [];
            }
        }

        return [];
    }

    /// <summary>What is done, and to what, in a line of running text.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="task">The task.</param>
    /// <returns>Words such as "unwire on B, C"; many trunks are counted rather than named.</returns>
    public static string Work(Planting planting, PlantingTask task)
    {
        const int MostNamed = 12;
        var targets = Target(planting, task);
        return targets.IsEmpty ? Kind(task)
            : targets.Length <= MostNamed ? $"{Kind(task)} on {string.Join(", ", targets)}"
            : $"{Kind(task)} on {targets.Length} trunks";
    }

    /// <summary>A stage of the tree's year.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>Its name.</returns>
    public static string Stage(Stage stage) => stage switch
    {
        Model.Times.Stage.BudBreak => "bud-break",
        Model.Times.Stage.LeafOut => "leaf-out",
        Model.Times.Stage.HardenOff => "hardened",
        Model.Times.Stage.Midsummer => "midsummer",
        Model.Times.Stage.LeafColour => "leaf colour",
        Model.Times.Stage.LeafFall => "leaf fall",
        _ => "dormant",
    };

    /// <summary>Why a task has no date.</summary>
    /// <param name="dated">A task without a window.</param>
    /// <returns>A few words.</returns>
    public static string Undated(DatedTask dated) => dated.Undated switch
    {
        UndatedReason.UnknownTask => "waits on a task that is not written down",
        UndatedReason.WaitsOnUndated => dated.WaitsOn.IsEmpty ? "waits on work without a date" : $"waits on {string.Join(" and ", dated.WaitsOn)}",
        UndatedReason.Circle => "waits, in the end, on itself",
        UndatedReason.UnknownStage => "the site or the species does not tell when that stage comes",
        UndatedReason.NoStart => "nothing says from when",
        UndatedReason.Contradiction => "what is said of its time cannot all hold",
        UndatedReason.OutOfCalendar => "too far off to reckon",
        _ => "no time is written down",
    };

    /// <summary>Whether a task is done and does not come again, so that <see cref="When"/> says when it was done.</summary>
    /// <param name="task">The task.</param>
    /// <returns>True when nothing of it is left.</returns>
    public static bool IsOver(PlantingTask task) => !task.Done.IsEmpty && !task.Times.Any(clause => clause is TimeClause.Every);

    /// <summary>When a task is due or was done.</summary>
    /// <param name="dated">The task.</param>
    /// <returns>Days in words: "1 to 30 November 2026", "from 9 May 2027", "done 20 November 2026", "7 times from … to …"; the reason for one without a date.</returns>
    public static string When(DatedTask dated)
    {
        if (dated.Window is not { } window)
        {
            return Undated(dated);
        }

        var done = dated.Task.Done.Select(day => day.Value).ToList();
        var isRepeated = dated.Task.Times.Any(clause => clause is TimeClause.Every);
        if (IsOver(dated.Task))
        {
            return $"done {DayWords.Day(done.Max())}";
        }

        if (isRepeated)
        {
            var times = dated.Repeats.Length == 0 ? "" : $"{dated.Repeats.Length} {(dated.Repeats.Length == 1 ? "time" : "times")}, {DayWords.Range(dated.Repeats[0], dated.Repeats[^1])}{(dated.RepeatsGoOn ? " and on" : "")}";
            var before = done.Count == 0 ? "" : $"done {done.Count} {(done.Count == 1 ? "time" : "times")}, last {DayWords.Day(done.Max())}";
            return times.Length > 0 && before.Length > 0 ? $"{times}; {before}" : times + before;
        }

        return window switch
        {
            { Earliest: { } earliest, Latest: { } latest } => DayWords.Range(earliest, latest),
            { Earliest: { } from } => $"from {DayWords.Day(from)}",
            _ => $"by {DayWords.Day(window.Last)}",
        };
    }
}
