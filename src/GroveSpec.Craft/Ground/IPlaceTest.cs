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
}
