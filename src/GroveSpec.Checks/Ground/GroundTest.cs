using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>Whether a place is free: within the bounds of the ground, and without a finding.</summary>
/// <param name="judge">Tells of findings.</param>
/// <param name="bounds">Where the ground ends.</param>
/// <param name="takers">What takes ground, one list for all tests of a search.</param>
internal sealed class GroundTest(GroundJudge judge, GroundBounds bounds, GroundTakers takers) : IPlaceTest
{
    private const int Beyond = 1;

    /// <inheritdoc/>
    public bool IsFree(PlanPoint place) => (judge.KeepsWithinRim || bounds.Contains(place)) && judge.IsFree(place);

    /// <inheritdoc/>
    public int TakerOf(PlanPoint place)
    {
        if (!judge.KeepsWithinRim && !bounds.Contains(place))
        {
            return Beyond;
        }

        if (judge.IsFree(place))
        {
            return 0;
        }

        return Beyond + 1 + takers.NumberOf(judge.Reason);
    }

    /// <summary>The finding that takes a place.</summary>
    /// <param name="taker">What <see cref="TakerOf"/> gave.</param>
    /// <returns>The finding; null for a place that is free, or lies beyond the ground.</returns>
    public GroundReason? ReasonOf(int taker) => taker > Beyond ? takers[taker - Beyond - 1] : null;

    /// <inheritdoc/>
    public bool? IsLikelyTaken(int taker, PlanPoint place) => ReasonOf(taker) is { } reason ? judge.IsLikely(reason, place) : null;

    /// <inheritdoc/>
    public IReadOnlyList<PlanPoint> NarrowBetween(PlanPoint from, PlanPoint to) => judge.NarrowBetween(from, to);
}
