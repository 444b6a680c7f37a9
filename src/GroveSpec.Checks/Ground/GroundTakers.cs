using System.Collections.Concurrent;

namespace GroveSpec.Checks.Ground;

/// <summary>The findings that take ground, each with a number. Searches that run side by side share one; who asks first gives the number, which stands for the finding and tells nothing else.</summary>
internal sealed class GroundTakers
{
    private readonly ConcurrentDictionary<GroundReason, int> numbers = [];
    private readonly ConcurrentDictionary<int, GroundReason> reasons = [];
    private int count;

    /// <summary>The finding of a number.</summary>
    /// <param name="number">A number that <see cref="NumberOf"/> gave.</param>
    public GroundReason this[int number] => reasons[number];

    /// <summary>The number of a finding.</summary>
    /// <param name="reason">The finding.</param>
    /// <returns>From 0 on, the same for the same.</returns>
    public int NumberOf(GroundReason reason)
    {
        if (numbers.TryGetValue(reason, out var known))
        {
            return known;
        }

        // Two may ask at once: the number that is not taken is never seen, and it is known what it means before it is given.
        var number = Interlocked.Increment(ref count) - 1;
        reasons[number] = reason;
        return numbers.GetOrAdd(reason, number);
    }
}
