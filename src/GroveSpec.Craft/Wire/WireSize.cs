using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Craft.Wire;

/// <summary>A size of wire that is sold, and how many of it lie side by side.</summary>
/// <param name="Metal">The metal.</param>
/// <param name="Diameter">The diameter of one.</param>
/// <param name="Gauge">Its number in the American wire gauge; null for a size in millimetres.</param>
/// <param name="Strands">How many, at least one.</param>
public readonly record struct WireSize(WireMetal Metal, Length Diameter, int? Gauge, int Strands)
{
    /// <summary>The aluminium wire that bends as hard as this.</summary>
    public Length AluminiumEqual => WireSizes.AluminiumEqual(Metal, Diameter, Strands);
}
