using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>Whether a place is free: within the bounds of the ground, and without a finding.</summary>
/// <param name="judge">Tells of findings.</param>
/// <param name="bounds">Where the ground ends.</param>
internal sealed class GroundTest(GroundJudge judge, GroundBounds bounds) : IPlaceTest
{
    private const int Beyond = 1;

    private readonly Dictionary<GroundReason, int> takers = [];
    private readonly List<GroundReason> reasons = [];

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

        if (!takers.TryGetValue(judge.Reason, out var taker))
        {
            takers.Add(judge.Reason, taker = Beyond + 1 + takers.Count);
            reasons.Add(judge.Reason);
        }

        return taker;
    }

    /// <inheritdoc/>
    public bool? IsLikelyTaken(int taker, PlanPoint place) => taker > Beyond ? judge.IsLikely(reasons[taker - Beyond - 1], place) : null;
}
