namespace GroveSpec.Checks;

/// <summary>What is known of a check apart from its findings. The catalogue holds one for each.</summary>
public sealed record CheckDescription
{
    /// <summary>Its name, in small letters with hyphens, as files write it.</summary>
    public required string Name { get; init; }

    /// <summary>How much its findings usually weigh.</summary>
    public required Severity Severity { get; init; }

    /// <summary>What a finding of it means, in a sentence.</summary>
    public required string Meaning { get; init; }

    /// <summary>Why a grower minds, and what can be done, in a few sentences.</summary>
    public required string Explanation { get; init; }

    /// <summary>Where its measure and its limit come from: a published source, "common practice", or "the language".</summary>
    public required string Source { get; init; }

    /// <summary>Its limit unless the file sets another; null for a check without one.</summary>
    public CheckLimit? Limit { get; init; }

    /// <summary>Whether it judges the composition; otherwise it is about the file itself.</summary>
    public bool IsComposition { get; init; }

    /// <summary>The docs page, relative to the project's root.</summary>
    public string Page => $"docs/checks/{Name}.md";
}
