namespace GroveSpec.Craft.Stand;

/// <summary>
/// Even random numbers that are the same for the same seed on every system and with every version of the runtime:
/// SplitMix64 (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators"; the constants from memory).
/// </summary>
/// <param name="seed">Any number.</param>
internal sealed class SeededRandom(ulong seed)
{
    private ulong state = seed;

    /// <summary>The next 64 random bits.</summary>
    /// <returns>Any number.</returns>
    public ulong NextBits()
    {
        state += 0x9E3779B97F4A7C15;
        var mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }

    /// <summary>A number spread evenly from 0 up to but not including 1.</summary>
    /// <returns>The number.</returns>
    public double NextShare() => (NextBits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A whole number spread evenly from 0 up to but not including a bound.</summary>
    /// <param name="bound">The bound, from 1; up to a million it favours no number by more than one in 10¹³.</param>
    /// <returns>The number.</returns>
    public int NextBelow(int bound) => (int)Math.BigMul(NextBits(), (ulong)bound, out _);

    /// <summary>A number from the normal distribution about 0 with deviation 1 (Box and Muller 1958).</summary>
    /// <returns>The number.</returns>
    public double NextNormal() => Math.Sqrt(-2 * Math.Log(1 - NextShare())) * Math.Cos(2 * Math.PI * NextShare());
}
