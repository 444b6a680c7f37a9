using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Species;

/// <summary>What is known of a species. Each value names its source.</summary>
public sealed record SpeciesProfile
{
    /// <summary>The name used in files, such as larix-kaempferi.</summary>
    public required string Name { get; init; }

    /// <summary>Where it was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>The botanical name as printed, such as Larix kaempferi; null when not given.</summary>
    public Sourced<string>? Botanical { get; init; }

    /// <summary>The name a grower says; null when not given.</summary>
    public Sourced<string>? Common { get; init; }

    /// <summary>When it carries leaves; null when not given.</summary>
    public Sourced<LeafHabit>? Leaves { get; init; }

    /// <summary>The coldest and warmest hardiness zone; null when not given.</summary>
    public Sourced<ZoneRange>? Hardiness { get; init; }

    /// <summary>How fast it grows against others; null when not given.</summary>
    public Sourced<GrowthPace>? Growth { get; init; }

    /// <summary>How often it flushes in a year; null when not given.</summary>
    public Sourced<Flush>? Flush { get; init; }

    /// <summary>The greatest outer-fibre strain of a bend that is commonly dared, a bare ratio; null when not given.</summary>
    public Sourced<Proportion>? BendLimit { get; init; }

    /// <summary>The stages of its year, against the site's frosts; empty when not given.</summary>
    public ImmutableArray<StageBand> Stages { get; init; } = [];

    /// <summary>What to take care of, in words.</summary>
    public ImmutableArray<Sourced<string>> Cautions { get; init; } = [];
}
