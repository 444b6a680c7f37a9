using System.Collections.Immutable;

namespace GroveSpec.Craft.Composition;

/// <summary>A trunk whose height does not go with its diameter, against others of the planting. Trunks are places in <see cref="StandingTrunks.Trunks"/>.</summary>
/// <param name="Trunk">The trunk.</param>
/// <param name="IsWide">True when it is wide but short, false when it is tall but thin.</param>
/// <param name="Against">The trunks that are thinner and yet taller, or wider and yet shorter.</param>
/// <param name="Difference">For the one of those it differs from most: the smaller of the differences in diameter and in height, in percent of the larger size.</param>
/// <param name="DiameterRank">Its place by diameter among those measured, 1 the widest.</param>
/// <param name="HeightRank">Its place by height, 1 the tallest.</param>
/// <param name="Measured">Among how many.</param>
public sealed record OutOfOrder(int Trunk, bool IsWide, ImmutableArray<int> Against, double Difference, int DiameterRank, int HeightRank, int Measured);
