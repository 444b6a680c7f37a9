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

    private static readonly string[] SulphurWords = ["sulphur", "sulfur"];
    private static readonly string[] CarvingWords = ["carv", "deadwood", "dead wood", "jin", "shari", "grind", "router", "rotary"];
    private static readonly string[] MovingWords = ["move", "moving", "transport", "sell", "give away", "exhibition", "to a show", "send"];

    /// <summary>The cautions for a planting, each a sentence or two.</summary>
    /// <param name="planting">The planting.</param>
    /// <returns>In a fixed order; empty for a planting without tasks.</returns>
    public static ImmutableArray<string> Of(Planting planting) => Of(planting, planting.Tasks);

    /// <summary>The cautions for some of the work on a planting.</summary>
    /// <param name="planting">The planting, for its species.</param>
    /// <param name="tasks">The work; a grower's own words for it, and notes, are looked through for sulphur, carving and moving.</param>
    /// <returns>In a fixed order; empty without any.</returns>
    public static ImmutableArray<string> Of(Planting planting, IEnumerable<PlantingTask> tasks)
    {
        ImmutableArray<PlantingTask> work = [.. tasks];
        var kinds = work.Select(task => task.Kind.Value).ToHashSet();
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

        if (Mentions(work, SulphurWords))
        {
            // Source: the label EPA 71096-11 of a lime sulphur (danger, corrosive, irreversible eye damage), and NLM on its reaction with acids.
            cautions.Add("Lime sulphur is corrosive and can blind: eye and skin protection, fresh air, and never near an acid, with which it gives off a poisonous, flammable gas. Some labels forbid it at home. Follow the product label, and ask a qualified person where you are not sure.");
        }

        if (Mentions(work, CarvingWords))
        {
            // Source: common practice.
            cautions.Add("Carving throws splinters and dust: protect eyes, ears and lungs, keep your hands out of the tool’s way, and let a person who is trained in power tools show you first.");
        }

        if (Mentions(work, MovingWords))
        {
            // Source: plant-health rules on movement in several countries, such as Canada D-97-07 and Oregon OAR 603-052-0114.
            cautions.Add("Plants, soil and cut wood may not be moved freely everywhere: ask your local plant-health authority before any of them leaves the garden.");
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

    private static bool Mentions(ImmutableArray<PlantingTask> tasks, string[] words) =>
        tasks.Any(task => words.Any(word => Holds(task.OtherKind, word) || Holds(task.Note?.Value, word)));

    // Only where a word begins, so that nothing is found in the middle of another one.
    private static bool Holds(string? text, string word)
    {
        for (var at = text?.IndexOf(word, StringComparison.OrdinalIgnoreCase) ?? -1; at >= 0; at = text!.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if (at == 0 || !char.IsLetter(text![at - 1]))
            {
                return true;
            }
        }

        return false;
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
