namespace GroveSpec.Drawing.Scene;

/// <summary>What is known of the cost of standing somewhere.</summary>
/// <param name="Least">The cost, or where counting was stopped, what it is at least.</param>
/// <param name="IsWhole">Whether all of it was counted.</param>
internal readonly record struct ObstacleCost(double Least, bool IsWhole)
{
    /// <summary>Whether it tells enough for a choice among places no dearer than a bound.</summary>
    /// <param name="bound">The bound.</param>
    public bool Answers(double bound) => IsWhole || Least > bound;
}
