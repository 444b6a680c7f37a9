namespace GroveSpec.Benchmarks;

/// <summary>Something that has to hold.</summary>
/// <param name="Title">What, in words.</param>
/// <param name="Measured">What was measured; null where it could not be.</param>
/// <param name="Limit">What it may be at most.</param>
/// <param name="Unit">The unit of both.</param>
internal sealed record Bound(string Title, double? Measured, double Limit, string Unit)
{
    /// <summary>Whether it is broken; what could not be measured is not.</summary>
    public bool IsBroken => Measured > Limit;

    /// <summary>How it came out, in a word.</summary>
    public string Verdict => Measured is null ? "not measured" : IsBroken ? "BROKEN" : "holds";
}
