using GroveSpec.Checks.Choosing;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Thin;

/// <summary>What is drawn over a plan of a choice: the saw's cross on each trunk that goes, and where the weight of the wood then lies.</summary>
internal sealed class ThinMarks
{
    private const double MiddleRadius = 3.5;
    private const double MiddleReach = 7;
    private const double WeightReach = 5.5;

    private readonly PlanLayout layout;
    private readonly DrawnTrunk[] gone;
    private readonly (double X, double Y) middle;
    private readonly (double X, double Y) weight;

    /// <summary>Prepares the marks.</summary>
    /// <param name="layout">The plan.</param>
    /// <param name="before">The planting as it stands.</param>
    /// <param name="stand">What would stand.</param>
    public ThinMarks(PlanLayout layout, PlantingState before, ThinnedStand stand)
    {
        this.layout = layout;
        var names = NamesGone(before, stand);
        gone = [.. layout.Trunks.Where(trunk => trunk.State.Presence == Presence.Removed && names.Contains(trunk.Name))];
        var (distance, toward) = (stand.Lopsided.Distance.Millimetres, stand.Lopsided.Toward);
        middle = OnPage(stand.Middle);
        weight = (layout.ToX(stand.Middle.X.Millimetres + (distance * toward.Rightward)), layout.ToY(stand.Middle.Y.Millimetres + (distance * toward.Backward)));
    }

    /// <summary>The trunks that stand and would be taken out.</summary>
    /// <param name="before">The planting as it stands.</param>
    /// <param name="stand">What would stand.</param>
    /// <returns>Their names.</returns>
    public static HashSet<string> NamesGone(PlantingState before, ThinnedStand stand) =>
        [.. before.Trunks.Where(trunk => trunk.Presence == Presence.Standing).Select(trunk => trunk.Name).Intersect(stand.TakenOut, StringComparer.Ordinal)];

    /// <summary>Keeps labels off the marks.</summary>
    /// <param name="obstacles">What labels keep off.</param>
    public void Avoid(ObstacleMap obstacles)
    {
        foreach (var trunk in gone)
        {
            var reach = Reach(trunk);
            obstacles.Avoid(Box.About(trunk.X, trunk.Y, 2 * reach, 2 * reach), 120);
        }

        obstacles.AvoidDisc(middle.X, middle.Y, MiddleReach, 60);
        obstacles.AvoidDisc(weight.X, weight.Y, WeightReach + 1, 120);
        obstacles.AvoidLine(middle.X, middle.Y, weight.X, weight.Y, 30);
    }

    /// <summary>Writes them.</summary>
    /// <param name="svg">Where to.</param>
    public void Write(SvgWriter svg)
    {
        foreach (var trunk in gone)
        {
            var reach = Reach(trunk);
            svg.BeginPath("gs-cut", trunk.Origin);
            svg.MoveTo(trunk.X - reach, trunk.Y - reach);
            svg.LineTo(trunk.X + reach, trunk.Y + reach);
            svg.MoveTo(trunk.X - reach, trunk.Y + reach);
            svg.LineTo(trunk.X + reach, trunk.Y - reach);
            svg.EndPath();
        }

        if (layout.Trunks.Length == 0)
        {
            return;
        }

        svg.Circle("gs-middle", middle.X, middle.Y, MiddleRadius);
        svg.BeginPath("gs-middle");
        svg.MoveTo(middle.X - MiddleReach, middle.Y);
        svg.LineTo(middle.X + MiddleReach, middle.Y);
        svg.MoveTo(middle.X, middle.Y - MiddleReach);
        svg.LineTo(middle.X, middle.Y + MiddleReach);
        svg.EndPath();
        svg.Line("gs-off-middle", middle.X, middle.Y, weight.X, weight.Y);
        svg.BeginPath("gs-weight");
        svg.MoveTo(weight.X, weight.Y - WeightReach);
        svg.LineTo(weight.X + WeightReach, weight.Y);
        svg.LineTo(weight.X, weight.Y + WeightReach);
        svg.LineTo(weight.X - WeightReach, weight.Y);
        svg.ClosePath();
        svg.EndPath();
    }

    /// <summary>Half the width of a cross: within the ring of a thick trunk, over that of a thin one, so that it is seen.</summary>
    private static double Reach(DrawnTrunk trunk) => Math.Max(4.5, trunk.Radius * 0.62);

    private (double X, double Y) OnPage(PlanPoint place) => (layout.ToX(place.X.Millimetres), layout.ToY(place.Y.Millimetres));
}
