namespace GroveSpec.Drawing.Scene;

/// <summary>
/// The unsteadiness of a hand, the same each time for the same name and texture: a trunk looks alike in every drawing and every year.
/// The seed is FNV-1a over the names; the sequence is SplitMix64 (Steele, Lea and Flood 2014).
/// </summary>
internal struct Wobble
{
    private ulong state;

    private Wobble(ulong seed) => state = seed;

    /// <summary>The hand for one texture of one thing.</summary>
    /// <param name="name">The thing's name.</param>
    /// <param name="texture">What is drawn, such as bark.</param>
    /// <returns>A hand at the start of its sequence.</returns>
    public static Wobble Of(ReadOnlySpan<char> name, ReadOnlySpan<char> texture)
    {
        var hash = 14695981039346656037UL;
        foreach (var c in name)
        {
            hash = (hash ^ c) * 1099511628211UL;
        }

        hash = (hash ^ 0xFFFF) * 1099511628211UL;
        foreach (var c in texture)
        {
            hash = (hash ^ c) * 1099511628211UL;
        }

        return new Wobble(hash);
    }

    /// <summary>The next number of the sequence.</summary>
    /// <returns>From 0 up to but not including 1.</returns>
    public double Next()
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        z ^= z >> 31;
        return (z >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>The next number, spread over a range.</summary>
    /// <param name="low">The least.</param>
    /// <param name="high">The bound above.</param>
    /// <returns>A number from low up to but not including high.</returns>
    public double Between(double low, double high) => low + (Next() * (high - low));

    /// <summary>A smooth unevenness round a full turn, of three waves.</summary>
    /// <returns>The waves; each call gives another.</returns>
    public Undulation NextUndulation() => new(Between(0, Math.Tau), Between(0, Math.Tau), Between(0, Math.Tau));
}
