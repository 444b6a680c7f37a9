using System.Collections.Immutable;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Model.Tasks;

/// <summary>One piece of work.</summary>
public sealed record PlantingTask
{
    /// <summary>Its name, unique among the tasks of a bound planting.</summary>
    public required string Name { get; init; }

    /// <summary>Where the statement was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>What is done.</summary>
    public required Stated<TaskKind> Kind { get; init; }

    /// <summary>What is done in words, for <see cref="TaskKind.Other"/>; null otherwise.</summary>
    public string? OtherKind { get; init; }

    /// <summary>What it is done to; null when the file does not say.</summary>
    public TaskTarget? Target { get; init; }

    /// <summary>When it is due: all of these hold. Empty when the file does not say.</summary>
    public ImmutableArray<TimeClause> Times { get; init; } = [];

    /// <summary>How it is done.</summary>
    public ImmutableArray<TaskDetail> Details { get; init; } = [];

    /// <summary>The days on which it was done, in the order written.</summary>
    public ImmutableArray<Stated<LocalDate>> Done { get; init; } = [];

    /// <summary>The grower's own note; null when there is none.</summary>
    public Stated<string>? Note { get; init; }
}
