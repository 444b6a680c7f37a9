using System.Numerics;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Ground;

/// <content>Trunks that stand in a heap, of which only some count as neighbours.</content>
public sealed partial class GroundStand
{
    /// <summary>From which distance on a trunk has as many others near it as are looked at, and whether as many stand in one's own bark.</summary>
    private (double FullFrom, bool IsHeap) Heaps()
    {
        var (least, found) = (double.PositiveInfinity, false);
        for (var index = 0; index < Count && Count > MostNeighbours + 1; index++)
        {
            double[] near = [.. byNearest.Where(other => other != index && index != Newcomer).Select(other => Square(index, other)).Order()];
            if (near.Length >= MostNeighbours)
            {
                least = Math.Min(least, near[MostNeighbours - 1]);
                double diameter = sections[index].Diameter.Nanometres + 1;
                found |= near[MostNeighbours - 1] <= diameter * diameter * (1 + 1e-9);
            }
        }

        return (least, found);
    }

    private bool IsInHeap()
    {
        double diameter = sections[Newcomer].Diameter.Nanometres + 1;
        return BitOperations.PopCount(PlanPairs.AtMost(squares, diameter * diameter * (1 + 1e-9))) > MostNeighbours;
    }
}
