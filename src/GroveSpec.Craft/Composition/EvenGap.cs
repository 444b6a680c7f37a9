using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>Two gaps at one trunk that are as long as each other. Trunks are places in <see cref="StandingTrunks.Trunks"/>.</summary>
/// <param name="Trunk">The trunk that both gaps start from.</param>
/// <param name="Near">The trunk at the end of the shorter gap.</param>
/// <param name="Far">The trunk at the end of the longer gap.</param>
/// <param name="Shorter">The shorter gap, from centre to centre.</param>
/// <param name="Longer">The longer gap.</param>
/// <param name="Difference">By how much the shorter falls short of the longer, in percent of the longer.</param>
public readonly record struct EvenGap(int Trunk, int Near, int Far, Length Shorter, Length Longer, double Difference);
