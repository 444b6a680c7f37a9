using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>Tells of any place whether it is free. One test serves one thread.</summary>
public interface IPlaceTest
{
    /// <summary>Whether a place is free.</summary>
    /// <param name="place">The place.</param>
    /// <returns>True when it is; the same answer for the same place each time.</returns>
    bool IsFree(PlanPoint place);

    /// <summary>What takes a place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>0 for a free place; else a number above zero that stands for what was met first, the same for the same.</returns>
    int TakerOf(PlanPoint place);

    /// <summary>Whether a place is likely to be taken by what took another: a guess that costs far less than the test, to know where to test.</summary>
    /// <param name="taker">What took another place.</param>
    /// <param name="place">The place.</param>
    /// <returns>The guess; null where none can be made.</returns>
    bool? IsLikelyTaken(int taker, PlanPoint place);

    /// <summary>Places between two at which something that is narrower than they are apart may take the ground or leave it free, to know where to test.</summary>
    /// <param name="from">A place.</param>
    /// <param name="to">Another.</param>
    /// <returns>The places, the nearest to <paramref name="from"/> first.</returns>
    IReadOnlyList<PlanPoint> NarrowBetween(PlanPoint from, PlanPoint to);
}
