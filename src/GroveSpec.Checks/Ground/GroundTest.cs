using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>Whether a place is free: within the bounds of the ground, and without a finding.</summary>
/// <param name="judge">Tells of findings.</param>
/// <param name="bounds">Where the ground ends.</param>
internal sealed class GroundTest(GroundJudge judge, GroundBounds bounds) : IPlaceTest
{
    /// <inheritdoc/>
    public bool IsFree(PlanPoint place) => (judge.KeepsWithinRim || bounds.Contains(place)) && judge.IsFree(place);
}
