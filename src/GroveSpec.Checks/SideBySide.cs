namespace GroveSpec.Checks;

/// <summary>What searches have in common that do pieces of work at once, or one after another where they are not told how.</summary>
internal static class SideBySide
{
    /// <summary>More pieces of work at once than these are not sooner done, since each has its own tables to lay out first.</summary>
    private const int MostAtOnce = 4;

    /// <summary>One of something for each piece of work that may be done at once.</summary>
    /// <typeparam name="T">What serves one thread.</typeparam>
    /// <param name="first">The first.</param>
    /// <param name="another">Lays out another that gives the same answers; asked at once too.</param>
    /// <param name="sideBySide">How the work is done; null for one piece after another.</param>
    /// <returns>The first alone where pieces are done one after another, else it and as many more as are of use.</returns>
    public static T[] OneEach<T>(T first, Func<T> another, Action<int, Action<int>>? sideBySide)
    {
        var each = new T[sideBySide is null ? 1 : MostAtOnce];
        each[0] = first;
        sideBySide?.Invoke(MostAtOnce - 1, number => each[number + 1] = another());
        return each;
    }

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
