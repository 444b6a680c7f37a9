using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Choosing;

/// <summary>A planting with some of its trunks taken out, and what is to be said of it.</summary>
public sealed record ThinnedStand
{
    /// <summary>The planting with the others taken out.</summary>
    public required PlantingState State { get; init; }

    /// <summary>The trunks that stay, those without a place included, by name.</summary>
    public required ImmutableArray<string> Kept { get; init; }

    /// <summary>The trunks that go, by name.</summary>
    public required ImmutableArray<string> TakenOut { get; init; }

    /// <summary>What the score is made of.</summary>
    public required ThinningScoreParts Parts { get; init; }

    /// <summary>What the checks of composition find, ranked as <see cref="Checker.Check"/> tells it.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>How many they find in all, told or not.</summary>
    public int Found => Findings.Length + Findings.Sum(finding => finding.Untold);

    /// <summary>The names of those checks, with how often each finds something where it is more than once; empty where nothing is found.</summary>
    public string Kinds => Wording.Kinds(Findings);

    /// <summary>The main trunk, of several that play the main role the thickest that stays, and of those as thick the highest; null where none of them stays.</summary>
    public required string? Main { get; init; }

    /// <summary>Roles that were played and are no longer, by name.</summary>
    public required ImmutableArray<string> LostRoles { get; init; }

    /// <summary>The shortest and the longest gap between neighbours, from centre to centre; null without neighbours.</summary>
    public required (Length Least, Length Most)? Gaps { get; init; }

    /// <summary>The least and the greatest diameter; null where none is known.</summary>
    public required (Length Least, Length Most)? Diameters { get; init; }

    /// <summary>The middle that wood is balanced over: of the container, or without one the mean of all places that trunks have now.</summary>
    public required PlanPoint Middle { get; init; }

    /// <summary>From the middle that wood is balanced over to where its weight lies.</summary>
    public required (Length Distance, Bearing Toward) Lopsided { get; init; }
}
