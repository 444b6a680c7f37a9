using GroveSpec.Model.Quantities;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Checks.Nudging;

/// <summary>One trunk that is moved or bent.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Distance">How far its foot goes, or the tip of one whose foot stays, seen from above.</param>
/// <param name="Toward">Which way.</param>
/// <param name="Place">Where its foot is then.</param>
/// <param name="Lean">How it leans then, where that is what changes; null where its foot moves, or the run of its trunk is written out.</param>
/// <param name="Height">How high it is then, where that changes with the lean.</param>
/// <param name="IsMoved">Whether its foot moves; else it is bent.</param>
public sealed record NudgedTrunk(string Name, Length Distance, Bearing Toward, PlanPoint Place, Lean? Lean, Length? Height, bool IsMoved);
