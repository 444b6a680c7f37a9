using System.Collections.Immutable;
using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Ground;

/// <summary>What was found when a grower asked for free ground.</summary>
public sealed record GroundAnswer
{
    /// <summary>Why there is nothing to tell, in a sentence with what to do; null where there is.</summary>
    public string? Obstacle { get; init; }

    /// <summary>Whether what is in the way is the question: it names a trunk that neither stands here nor is planned.</summary>
    public bool IsMisasked { get; init; }

    /// <summary>The trunk that ground was looked for: the one named, or one more of a name that is free.</summary>
    public TrunkState? Trunk { get; init; }

    /// <summary>Whether it is one more.</summary>
    public bool IsOneMore { get; init; }

    /// <summary>The planting without it.</summary>
    public PlantingState? Without { get; init; }

    /// <summary>The outline of the free ground: closed lines with free ground at their left; empty where there is none.</summary>
    public ImmutableArray<ImmutableArray<PlanPoint>> Outline { get; init; } = [];

    /// <summary>Whether ground is free, but none of the spots lies in it, since it is too narrow.</summary>
    public bool IsTooNarrow => !Outline.IsEmpty && Spots is [{ Raises.IsEmpty: false }, ..];

    /// <summary>In how many pieces of a square centimetre or more it lies.</summary>
    public int Pieces => Outline.Count(ring => GroundOutline.TwiceAreaOf(ring) >= 200);

    /// <summary>The free ground in square millimetres.</summary>
    public double FreeArea { get; init; }

    /// <summary>All ground that was looked at in square millimetres: within the rim; null without a container.</summary>
    public double? WholeArea { get; init; }

    /// <summary>How near trunks the ground was looked for where no container bounds it; null where one does.</summary>
    public Length? Reach { get; init; }

    /// <summary>How far apart the places lie that were looked at; free ground narrower than that may be missing from the outline.</summary>
    public Length Step { get; init; }

    /// <summary>The limit of the check for lines that holds for the file: a share of the radii.</summary>
    public double LineLimit { get; init; }

    /// <summary>The checks that take the rest, with the share of all ground each takes, the largest first; each place counts for the first that was met.</summary>
    public ImmutableArray<(string Check, double Share)> Takers { get; init; } = [];

    /// <summary>The best few spots, the best first; where no ground is free, the least bad.</summary>
    public ImmutableArray<GroundSpot> Spots { get; init; } = [];

    /// <summary>What one more trunk of these sizes raises wherever it stands.</summary>
    public ImmutableArray<Finding> Anywhere { get; init; } = [];

    /// <summary>What else a grower has to know, each a sentence.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
