using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Fronts;

namespace GroveSpec.Checks.Fronts;

/// <summary>How far thickness goes with nearness while a planting turns; worked out anew only when two trunks change their order.</summary>
/// <param name="table">The planting.</param>
internal sealed class DepthRanks(TurnTable table)
{
    private readonly List<int> order = [];
    private readonly List<bool> isEqual = [];
    private double correlation;

    /// <summary>Of how many trunks, for the bearing last asked of.</summary>
    public int Count => order.Count;

    /// <summary>The coefficient of thickness with nearness from the bearing last turned to.</summary>
    /// <returns>From −1 to 1.</returns>
    public double Correlation()
    {
        if (!IsKnown())
        {
            order.Clear();
            isEqual.Clear();
            foreach (var trunk in table.Order)
            {
                if (table.Trunks[trunk].Diameter is not null)
                {
                    order.Add(trunk);
                }
            }

            order.Sort((one, other) => table.Foot(one).Depth.CompareTo(table.Foot(other).Depth));
            for (var index = 1; index < order.Count; index++)
            {
                isEqual.Add(table.Foot(order[index - 1]).Depth == table.Foot(order[index]).Depth);
            }

            correlation = RankCorrelation.Spearman(
                [.. order.Select(trunk => table.Trunks[trunk].Diameter!.Value.Value.Millimetres)],
                [.. order.Select(trunk => -table.Foot(trunk).Depth.Millimetres)]);
        }

        return correlation;
    }

    private bool IsKnown()
    {
        var seen = 0;
        foreach (var trunk in table.Order)
        {
            seen += table.Trunks[trunk].Diameter is null ? 0 : 1;
        }

        if (seen != order.Count)
        {
            return false;
        }

        for (var index = 0; index < order.Count; index++)
        {
            if (!table.IsSeen(order[index]))
            {
                return false;
            }

            if (index > 0)
            {
                var compared = table.Foot(order[index - 1]).Depth.CompareTo(table.Foot(order[index]).Depth);
                if (isEqual[index - 1] ? compared != 0 : compared >= 0)
                {
                    return false;
                }
            }
        }

        return true;
    }
}
