using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Plan;

/// <summary>What the labels of any plan keep off: trunks, their runs and tips, and the rim.</summary>
internal static class PlanObstacles
{
    /// <summary>Adds them.</summary>
    /// <param name="obstacles">What labels keep off.</param>
    /// <param name="layout">The plan.</param>
    public static void Add(ObstacleMap obstacles, PlanLayout layout)
    {
        foreach (var trunk in layout.Trunks)
        {
            obstacles.AvoidDisc(trunk.X, trunk.Y, trunk.Radius + 3, 250);
            if (trunk.Leans && layout.Detail != PlanDetail.Least)
            {
                for (var i = 1; i < trunk.Run.Length; i++)
                {
                    obstacles.AvoidLine(trunk.Run[i - 1].X, trunk.Run[i - 1].Y, trunk.Run[i].X, trunk.Run[i].Y, 12);
                }

                obstacles.AvoidDisc(trunk.Tip.X, trunk.Tip.Y, 5, 16);
            }
        }

        for (var i = 0; i < layout.RimOnPage.Length; i++)
        {
            var (from, to) = (layout.RimOnPage[i], layout.RimOnPage[(i + 1) % layout.RimOnPage.Length]);
            obstacles.AvoidLine(from.X, from.Y, to.X, to.Y, 9);
        }
    }
}
