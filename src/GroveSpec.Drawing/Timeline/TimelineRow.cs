using GroveSpec.Craft.Calendar;

namespace GroveSpec.Drawing.Timeline;

/// <summary>A task's row.</summary>
/// <param name="Dated">The task and its days.</param>
/// <param name="Kind">What is done, cleaned.</param>
/// <param name="Name">Its name, cleaned.</param>
/// <param name="Target">What it is done to, cleaned.</param>
/// <param name="BeginsGroup">Whether another family of work begins here.</param>
internal sealed record TimelineRow(DatedTask Dated, string Kind, string Name, string Target, bool BeginsGroup);
