using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Plan;

/// <summary>What a plan carries besides the planting: numbered things between crowns and trunks and above them, with a sentence for each.</summary>
internal abstract class PlanLayer
{
    /// <summary>What the plate shows, behind the planting's name.</summary>
    public abstract string Title { get; }

    /// <summary>A sentence for each numbered thing, in the order of the numbers; without a <see cref="Mark"/> sentences that stand before those of the findings.</summary>
    public abstract IReadOnlyList<string> Sentences { get; }

    /// <summary>The line below the heading.</summary>
    public abstract string Remark { get; }

    /// <summary>What the marks mean.</summary>
    public abstract string Note { get; }

    /// <summary>What the marks mean that a plan has.</summary>
    /// <param name="layout">The plan.</param>
    /// <returns>Here the note for any plan.</returns>
    public virtual string NoteOn(PlanLayout layout) => Note;

    /// <summary>The class of the numbered rings; null where nothing is numbered but findings.</summary>
    public abstract string? Mark { get; }

    /// <summary>Whether the note says already what the ring of a trunk that does not stand means.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>Here always false.</returns>
    public virtual bool Explains(TrunkState trunk) => false;

    /// <summary>Whether a trunk is drawn beside the planting, on no ground of it.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>Here always false.</returns>
    public virtual bool StandsBeside(TrunkState trunk) => false;

    /// <summary>How far what is drawn round a trunk reaches, so that its name may stand beyond.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>Pixels from its centre; here always 0.</returns>
    public virtual double ReachOf(DrawnTrunk trunk) => 0;

    /// <summary>Places that the page holds besides what stands and the container.</summary>
    public virtual IEnumerable<PlanPoint> Reaches => [];

    /// <summary>Whether gaps between neighbours are drawn besides.</summary>
    public virtual bool ShowsGaps => true;

    /// <summary>What is told to those who do not see the plate; null for what a plan tells.</summary>
    public virtual string? Description => null;

    /// <summary>The plate's style.</summary>
    /// <returns>A new sheet.</returns>
    public abstract StyleSheet Sheet();

    /// <summary>Writes what lies over crowns and below trunks.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    public abstract void WriteBelow(SvgWriter svg, PlanLayout layout);

    /// <summary>Asks for places for the numbers.</summary>
    /// <param name="placer">Finds them.</param>
    /// <param name="layout">The plan.</param>
    public abstract void Ask(LabelPlacer placer, PlanLayout layout);

    /// <summary>Writes what lies above the trunks, with the numbers.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    /// <param name="labels">Where the numbers stand.</param>
    public abstract void WriteAbove(SvgWriter svg, PlanLayout layout, PlanLabels labels);
}
