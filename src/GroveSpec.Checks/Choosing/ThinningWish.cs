using System.Collections.Immutable;

namespace GroveSpec.Checks.Choosing;

/// <summary>What a grower asks of a thinning.</summary>
/// <param name="Least">How many trunks may stand at the least, from 1.</param>
/// <param name="Most">How many at the most.</param>
/// <param name="With">The names of trunks that stay in any case.</param>
/// <param name="Without">The names of trunks that go in any case.</param>
public sealed record ThinningWish(int Least, int Most, ImmutableArray<string> With, ImmutableArray<string> Without)
{
    /// <summary>The largest number of trunks that may be asked for.</summary>
    public const int MostKept = 1000;
}
