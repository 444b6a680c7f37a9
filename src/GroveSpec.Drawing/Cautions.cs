using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Drawing;

/// <summary>
/// The usual cautions for the work that a planting holds. They name no dose and promise nothing; where a rule or a
/// product decides, they send to the label, the authority and people who know.
/// </summary>
public static class Cautions
{
    private static readonly TaskKind[] Cutting =
        [TaskKind.Prune, TaskKind.RemoveSacrifice, TaskKind.RootPrune, TaskKind.Repot, TaskKind.Graft, TaskKind.Defoliate];

    /// <summary>The cautions for a planting, each a sentence or two.</summary>
    /// <param name="planting">The planting.</param>
    /// <returns>In a fixed order; empty for a planting without tasks.</returns>
    public static ImmutableArray<string> Of(Planting planting) => Of(planting, planting.Tasks.Select(task => task.Kind.Value).ToHashSet());

    /// <summary>The cautions for some kinds of work on a planting.</summary>
    /// <param name="planting">The planting, for its species.</param>
    /// <param name="kinds">The kinds of work.</param>
    /// <returns>In a fixed order; empty without any.</returns>
    public static ImmutableArray<string> Of(Planting planting, IReadOnlySet<TaskKind> kinds)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (kinds.Overlaps((IEnumerable<TaskKind>)[TaskKind.Wire, TaskKind.Unwire, TaskKind.LookOver]))
        {
            // Source: values read for this project, section G, "from memory"; common practice.
            cautions.Add("Wire ends under strain spring back: protect your eyes. Look wired trunks over often, and take wire off before it bites; cut it off in pieces rather than unwind it where it is tight.");
            cautions.Add("No figure here promises that a wire will hold or that a bend is safe. Wood differs from tree to tree; a person who bends trees can show you what no table can.");
        }

        if (kinds.Overlaps(Cutting))
        {
            // Source: common practice; sterilising between trees also in public guidance on elm pruning.
            cautions.Add("Cut away from your hand, with sharp tools. Clean tools between trees, since diseases travel on them.");
        }

        if (kinds.Overlaps([TaskKind.Seal, TaskKind.Feed, TaskKind.Graft, TaskKind.Other]))
        {
            cautions.Add("Pastes, feeds and sprays: follow the product label and your local plant-health authority. Never mix products unless their labels say so.");
        }

        if (HasElm(planting) && kinds.Count > 0)
        {
            // Source: public rules on elm and zelkova in several countries (pruning seasons, movement); they differ from place to place.
            cautions.Add("Elm and zelkova: in some places the months in which they may be pruned, and moving them or their soil, are ruled by law. Ask your local plant-health authority before you cut or move them.");
        }

        if (kinds.Contains(TaskKind.Shelter))
        {
            cautions.Add("Roots in a container are less hardy than the top. When frost is forecast, the forecast decides and not the date here.");
        }

        if (cautions.Count > 0)
        {
            cautions.Add("Dates are bands from rules of thumb. The tree in front of you decides.");
        }

        return cautions.ToImmutable();
    }

    private static bool HasElm(Planting planting)
    {
        foreach (var species in planting.Trunks.Select(planting.SpeciesOf).Append(planting.Species?.Value))
        {
            if (species is not null && (species.StartsWith("ulmus", StringComparison.OrdinalIgnoreCase) || species.StartsWith("zelkova", StringComparison.OrdinalIgnoreCase)))
            {
                return true;
            }
        }

        return false;
    }
}
