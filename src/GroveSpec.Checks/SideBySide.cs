namespace GroveSpec.Checks;

/// <summary>How pieces of work are done by a search that was not told how.</summary>
internal static class SideBySide
{
    /// <summary>Does pieces of work in their order.</summary>
    /// <param name="count">How many there are.</param>
    /// <param name="work">Does one, told its number from 0.</param>
    public static void OneAfterAnother(int count, Action<int> work)
    {
        for (var number = 0; number < count; number++)
        {
            work(number);
        }
    }
}
