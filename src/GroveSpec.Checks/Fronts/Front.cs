using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Fronts;

/// <summary>What a planting is when it is seen from one bearing.</summary>
public sealed record Front
{
    /// <summary>The bearing at which the viewer stands.</summary>
    public required Bearing From { get; init; }

    /// <summary>What its score is made of.</summary>
    public required FrontScoreParts Parts { get; init; }

    /// <summary>The bearings about it from which no more is found.</summary>
    public required FrontSpan Span { get; init; }

    /// <summary>What it loses: what the checks that depend on the view find from there, as they tell it.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>How many findings those are, with those that are counted and not told.</summary>
    public int Found => Findings.Sum(finding => 1 + finding.Untold);

    /// <summary>The findings by their checks, such as "hidden-trunk 2 times, level-tops"; empty for none.</summary>
    public string Kinds => Wording.Kinds(Findings);
}
