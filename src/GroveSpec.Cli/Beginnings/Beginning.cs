using GroveSpec.Model;

namespace GroveSpec.Cli.Beginnings;

/// <summary>What a first planting is to be.</summary>
internal sealed record Beginning
{
    /// <summary>Its name, without quotes.</summary>
    public required string Name { get; init; }

    /// <summary>How the trunks belong together.</summary>
    public required Habit Habit { get; init; }

    /// <summary>Its species as files write it; null to leave it open.</summary>
    public required string? Species { get; init; }

    /// <summary>How many trunks it has, from <see cref="FirstPlanting.FewestTrunks"/> to <see cref="FirstPlanting.MostTrunks"/>.</summary>
    public required int Trunks { get; init; }
}
