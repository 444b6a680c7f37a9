using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Fronts;

/// <summary>The score of a front: what is found from a bearing, and how good the front is otherwise. The weights are our own choice. One serves one thread.</summary>
internal sealed class FrontScore
{
    /// <summary>The score is told and sought at every hundredth of a degree.</summary>
    public const int StepsOfADegree = 100;

    /// <summary>How many those are all round.</summary>
    public const int Steps = 360 * StepsOfADegree;

    private const double CoveredWeight = 3;
    private const double SamenessWeight = 0.25;
    private const double NarrownessWeight = 2;

    private readonly double broadest;

    /// <summary>Lays a planting out.</summary>
    /// <param name="context">The planting, of which at most 64 trunks stand and have a place.</param>
    public FrontScore(CheckContext context)
    {
        Findings = new FrontFindings(context);
        broadest = Findings.Outline is { } outline ? Enumerable.Range(0, 180).Max(degrees => Breadth(outline, new Bearing(degrees))) : 0;
    }

    /// <summary>What is found.</summary>
    public FrontFindings Findings { get; }

    /// <summary>The bearing of a step.</summary>
    /// <param name="step">The step, counted from the back clockwise; any number.</param>
    /// <returns>The bearing, within one turn.</returns>
    public static Bearing BearingOf(int step) => new(((step % Steps) + Steps) % Steps / (double)StepsOfADegree);

    /// <summary>How good the front is otherwise.</summary>
    /// <param name="from">The bearing that <see cref="Findings"/> was last asked of.</param>
    /// <returns>The three parts, none below zero.</returns>
    public (double Covered, double Sameness, double Narrowness) Look(Bearing from)
    {
        var table = Findings.Table;
        var order = table.Order;
        double covered = table.Trunks.Length - order.Length, same = 0;
        for (var index = 0; index < order.Length; index++)
        {
            covered += table.Hidden(order[index])?.Share ?? 0;
            if (index >= 2)
            {
                double first = (table.Foot(order[index - 1]).Across - table.Foot(order[index - 2]).Across).Nanometres;
                double second = (table.Foot(order[index]).Across - table.Foot(order[index - 1]).Across).Nanometres;
                var (shorter, longer) = first < second ? (first, second) : (second, first);
                same += longer > 0 ? shorter / longer : 1;
            }
        }

        var narrowness = broadest > 0 && Findings.Outline is { } outline ? NarrownessWeight * Math.Max(0, 1 - (Breadth(outline, from) / broadest)) : 0;
        return (CoveredWeight * covered / table.Trunks.Length, order.Length > 2 ? SamenessWeight * same / (order.Length - 2) : 0, narrowness);
    }

    /// <summary>The width of a container against its width and depth together, as the viewer sees it.</summary>
    private static double Breadth(ContainerOutline outline, Bearing from)
    {
        var ((left, right), (near, far)) = (outline.Reach(new Bearing(from.Degrees - 90)), outline.Reach(from));
        var (width, depth) = ((right - left).Millimetres, (far - near).Millimetres);
        return width + depth > 0 ? width / (width + depth) : 0;
    }
}
