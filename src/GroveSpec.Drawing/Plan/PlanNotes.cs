using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Plan;

/// <summary>The small print below a plan.</summary>
internal static class PlanNotes
{
    private const double Line = 18;
    private const double Size = 13.5;

    /// <summary>What has to be said.</summary>
    /// <param name="state">The planting.</param>
    /// <param name="layout">The plan.</param>
    /// <param name="hasGaps">Whether gaps are drawn.</param>
    /// <param name="units">The units that are read.</param>
    /// <param name="layer">What the plan carries besides, whose note is said first; null for nothing.</param>
    /// <param name="taped">What is to be said of places from tape readings; null for nothing.</param>
    /// <returns>Lines that fit the page.</returns>
    public static List<string> Of(PlantingState state, PlanLayout layout, bool hasGaps, UnitSystem units, PlanLayer? layer = null, string? taped = null)
    {
        var said = new List<string>();
        if (layer is not null)
        {
            said.Add(layer.NoteOn(layout));
        }

        if (hasGaps)
        {
            var unit = DrawnLength.UnitFor(Length.FromMillimetres(Math.Min(1e9, layout.Extents.Width / layout.Scale)), units);
            said.Add($"Dotted lines are gaps between neighbours, in {Words(unit)} from centre to centre.");
        }

        if (Array.Exists(layout.Trunks, trunk => trunk is { CrownRadius: > 0, IsCrownAssumed: true }))
        {
            said.Add("A crown in a broken line was not stated.");
        }

        if (OfLeans(layout) is { } leans)
        {
            said.Add(leans);
        }

        if (Array.Exists(layout.Trunks, trunk => trunk.State.Presence == Presence.Planned))
        {
            said.Add("A thin empty ring is planned.");
        }

        if (Array.Exists(layout.Trunks, trunk => trunk.State.Presence == Presence.Removed && layer?.Explains(trunk.State) != true))
        {
            said.Add("A broken ring was removed.");
        }

        if (taped is not null)
        {
            said.Add(taped);
        }

        var lost = state.Trunks.Where(trunk => trunk.Place is null).Select(trunk => DrawnText.Isolated(trunk.Name)).ToArray();
        if (lost.Length > 0)
        {
            said.Add($"Not drawn, since the place is not known: {string.Join(", ", lost.Take(12))}{(lost.Length > 12 ? $" and {lost.Length - 12} more" : "")}.");
        }

        return said.Count == 0 ? [] : DrawnText.Wrapped(string.Join(" ", said), PlanLayout.PageWidth - (2 * Plate.Margin), Size, Face.Italic);
    }

    /// <summary>What the lines to the tips of leaning trunks mean.</summary>
    /// <param name="layout">The plan.</param>
    /// <returns>A sentence; null where none is drawn.</returns>
    public static string? OfLeans(PlanLayout layout) => layout.Detail != PlanDetail.Least && Array.Exists(layout.Trunks, trunk => trunk.Leans)
        ? "A line to a small open circle runs from the foot of a leaning trunk to its tip."
        : null;

    private static string Words(string unit) => unit switch { "in" => "inches", "ft" => "feet", _ => unit };

    /// <summary>How much room they take.</summary>
    public static double Height(List<string> lines) => lines.Count == 0 ? 0 : (lines.Count * Line) + 10;

    /// <summary>Writes them.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="top">Their upper edge.</param>
    public static void Write(SvgWriter svg, List<string> lines, double top)
    {
        foreach (var line in lines)
        {
            svg.Text("gs-remark", Plate.Margin, top + 13, Size, line);
            top += Line;
        }
    }
}
