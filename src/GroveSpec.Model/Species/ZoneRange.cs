using GroveSpec.Model.Sites;

namespace GroveSpec.Model.Species;

/// <summary>The hardiness zones in which a species is kept outdoors, in the ground.</summary>
/// <param name="Coldest">The coldest zone.</param>
/// <param name="Warmest">The warmest zone.</param>
public readonly record struct ZoneRange(HardinessZone Coldest, HardinessZone Warmest);
