using System.Collections.Concurrent;

namespace GroveSpec.Checks.Ground;

/// <summary>The findings that take ground, each with a number. Searches that run side by side share one; who asks first gives the number, which stands for the finding and tells nothing else.</summary>
internal sealed class GroundTakers
{
    private readonly ConcurrentDictionary<GroundReason, int> numbers = [];
    private readonly Lock adding = new();
    private volatile GroundReason[] reasons = new GroundReason[256];
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

        lock (adding)
        {
            // Another may have been quicker.
            if (numbers.TryGetValue(reason, out known))
            {
                return known;
            }

            if (count == reasons.Length)
            {
                var more = reasons;
                Array.Resize(ref more, 2 * count);
                reasons = more;
            }

            // What a number means is known before it is given.
            reasons[count] = reason;
            numbers[reason] = count;
            return count++;
        }
    }
}
