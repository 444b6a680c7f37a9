using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <content>What an edge is halved by.</content>
public sealed partial class GroundOutline
{
    /// <summary>Tells whether places are taken; each is a type of its own, so that asking, which is most of the work, costs no call of a delegate and no object.</summary>
    private interface ITaking
    {
        bool Takes(PlanPoint place);
    }

    /// <summary>As one taker is likely to take them.</summary>
    private readonly struct Likely(IPlaceTest test, int taker) : ITaking
    {
        public bool Takes(PlanPoint place) => test.IsLikelyTaken(taker, place) is true;
    }

    /// <summary>As any of some takers is likely to take them.</summary>
    private readonly struct LikelyByAny(IPlaceTest test, List<int> takers) : ITaking
    {
        public bool Takes(PlanPoint place)
        {
            foreach (var taker in takers)
            {
                if (test.IsLikelyTaken(taker, place) is true)
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>As they are tested.</summary>
    private struct Tested(IPlaceTest test, int taker) : ITaking
    {
        /// <summary>What took the last of them that was taken; before that, what is known beforehand.</summary>
        public int Last { get; private set; } = taker;

        public bool Takes(PlanPoint place)
        {
            var found = test.TakerOf(place);
            Last = found > 0 ? found : Last;
            return found > 0;
        }
    }
}
