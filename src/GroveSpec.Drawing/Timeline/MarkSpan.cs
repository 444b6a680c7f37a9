namespace GroveSpec.Drawing.Timeline;

/// <summary>Where a task's mark stands on the page.</summary>
/// <param name="Left">Its left tip.</param>
/// <param name="Right">Its right tip.</param>
/// <param name="Y">The middle of its row.</param>
internal readonly record struct MarkSpan(double Left, double Right, double Y);
