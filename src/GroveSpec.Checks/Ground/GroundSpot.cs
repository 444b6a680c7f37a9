using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Ground;

/// <summary>A place for a trunk.</summary>
public sealed record GroundSpot
{
    /// <summary>The place, a whole number of hand's steps from the origin.</summary>
    public required PlanPoint Place { get; init; }

    /// <summary>How far it is to the nearest place where a finding begins; zero where it raises some itself.</summary>
    public required Length Room { get; init; }

    /// <summary>Where that is; null where it raises some itself.</summary>
    public PlanPoint? NearestEdge { get; init; }

    /// <summary>The check whose finding begins there; null where it raises some itself or only the ground ends there.</summary>
    public string? LimitedBy { get; init; }

    /// <summary>The other trunks that finding is about.</summary>
    public ImmutableArray<string> LimitedByTrunks { get; init; } = [];

    /// <summary>The spot's score, the lower the better; docs/ground.md tells how it is measured.</summary>
    public required double Score { get; init; }

    /// <summary>Why, and what limits it, in one sentence.</summary>
    public required string Why { get; init; }

    /// <summary>What a trunk there raises that is not found without it, whatever its place left out; empty on free ground.</summary>
    public ImmutableArray<Finding> Raises { get; init; } = [];

    /// <summary>What is found without the trunk and no longer with it there.</summary>
    public ImmutableArray<Finding> Clears { get; init; } = [];

    /// <summary>The edits that write it into the file; empty where a note says why the trunk's place is not written.</summary>
    public ImmutableArray<TextEdit> Edits { get; init; } = [];
}
