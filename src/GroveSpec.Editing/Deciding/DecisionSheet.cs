using System.Collections.Immutable;

namespace GroveSpec.Editing.Deciding;

/// <summary>What came of a question: pictures and sentences to choose by, and the edits that each choice comes to.</summary>
public sealed record DecisionSheet
{
    /// <summary>Sentences that stand before the choices; at least one where there is no choice.</summary>
    public ImmutableArray<string> Says { get; init; } = [];

    /// <summary>A picture of all choices together, as a whole SVG document; null where each has its own, or where there is none.</summary>
    public string? Picture { get; init; }

    /// <summary>The choices, the best first.</summary>
    public ImmutableArray<DecisionWay> Ways { get; init; } = [];

    /// <summary>Sentences that stand after the choices.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What can be asked otherwise.</summary>
    public ImmutableArray<DecisionField> Fields { get; init; } = [];
}
