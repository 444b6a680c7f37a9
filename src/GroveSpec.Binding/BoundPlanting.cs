using System.Collections.Immutable;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Model;

namespace GroveSpec.Binding;

/// <summary>What came of binding a file.</summary>
/// <param name="Planting">Every fact that could be taken.</param>
/// <param name="Origins">Where the facts stand.</param>
/// <param name="Findings">What was found wrong with the text and with what it states, in the order of the file.</param>
/// <param name="Used">The files that facts were taken from besides the planting's own, and the built-in profiles it names.</param>
public sealed record BoundPlanting(
    Planting Planting,
    IOriginTable Origins,
    ImmutableArray<Finding> Findings,
    ImmutableArray<UsedFile> Used);
