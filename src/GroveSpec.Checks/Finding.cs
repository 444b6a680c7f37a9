using System.Collections.Immutable;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks;

/// <summary>One thing that was noticed.</summary>
public sealed record Finding
{
    /// <summary>Which check noticed it.</summary>
    public required CheckDescription Check { get; init; }

    /// <summary>How much it weighs.</summary>
    public required Severity Severity { get; init; }

    /// <summary>Where, exactly.</summary>
    public required SourceSpan Place { get; init; }

    /// <summary>A sentence with what was measured and what to do.</summary>
    public required string Message { get; init; }

    /// <summary>The trunks it is about, sorted by name; empty when it is about none.</summary>
    public ImmutableArray<string> Trunks { get; init; } = [];

    /// <summary>What was measured, in the unit of <see cref="Unit"/>; null when nothing was.</summary>
    public double? Measured { get; init; }

    /// <summary>The limit it was held against, in the same unit; null when there is none.</summary>
    public double? Limit { get; init; }

    /// <summary>The unit of both, such as mm, % or deg; empty for a bare ratio.</summary>
    public string Unit { get; init; } = "";

    /// <summary>How bad it is among findings of its check, the larger the worse; only its order means anything.</summary>
    public double Weight { get; init; }

    /// <summary>Other places it is about.</summary>
    public ImmutableArray<RelatedPlace> Related { get; init; } = [];

    /// <summary>What the drawings can show of it.</summary>
    public ImmutableArray<Figure> Figures { get; init; } = [];

    /// <summary>Ways to be rid of it, the best first.</summary>
    public ImmutableArray<Remedy> Remedies { get; init; } = [];

    /// <summary>How many more of the same check were found and left untold; 0 for all but the last told of a kind.</summary>
    public int Untold { get; init; }
}
