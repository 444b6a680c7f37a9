using System.Collections.Immutable;

namespace GroveSpec.Craft.Calendar;

/// <summary>When the tasks of a planting are due.</summary>
/// <param name="Tasks">One entry for each task, in the order of the file.</param>
/// <param name="Conflicts">What was said of their times that cannot hold together, no two with a statement in common. The task whose plan was written last in one has no days.</param>
public sealed record TaskReckoning(ImmutableArray<DatedTask> Tasks, ImmutableArray<TaskConflict> Conflicts);
