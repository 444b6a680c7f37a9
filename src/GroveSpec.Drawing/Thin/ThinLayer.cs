using GroveSpec.Checks.Choosing;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Thin;

/// <summary>What a plan of a choice carries besides: crosses on the trunks that go, and the weight of the wood against the middle.</summary>
internal sealed class ThinLayer : PlanLayer
{
    /// <summary>What the marks mean.</summary>
    public const string Meaning = "A broken ring with a cross is a trunk to take out. The ringed cross is the middle, and the filled diamond is where the weight of the wood then lies.";

    private readonly PlantingState before;
    private readonly ThinnedStand stand;
    private readonly HashSet<string> gone;

    /// <summary>Prepares the layer.</summary>
    /// <param name="before">The planting as it stands.</param>
    /// <param name="suggestion">The choice.</param>
    public ThinLayer(PlantingState before, ThinningSuggestion suggestion)
    {
        (this.before, stand) = (before, suggestion.Stand);
        gone = ThinMarks.NamesGone(before, stand);
        Sentences = [.. new[] { ThinningWords.Order(stand), suggestion.Why, ThinningWords.NearlyAsGood(suggestion) }.Where(said => said.Length > 0)];
    }

    /// <inheritdoc/>
    public override string Title => "which trunks to keep";

    /// <inheritdoc/>
    public override string? Mark => null;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Sentences { get; }

    /// <inheritdoc/>
    public override string Remark => "Which trunks to keep · from above, as it stands after the others are taken out";

    /// <inheritdoc/>
    public override string Note => Meaning;

    /// <inheritdoc/>
    public override StyleSheet Sheet() => ThinStyle.Sheet();

    /// <inheritdoc/>
    public override bool Explains(TrunkState trunk) => gone.Contains(trunk.Name);

    /// <inheritdoc/>
    public override void WriteBelow(SvgWriter svg, PlanLayout layout)
    {
    }

    /// <inheritdoc/>
    public override void Ask(LabelPlacer placer, PlanLayout layout) => new ThinMarks(layout, before, stand).Avoid(placer.Obstacles);

    /// <inheritdoc/>
    public override void WriteAbove(SvgWriter svg, PlanLayout layout, PlanLabels labels) => new ThinMarks(layout, before, stand).Write(svg);
}
