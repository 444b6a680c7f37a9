using GroveSpec.Checks.Choosing;
using GroveSpec.Checks.Judging;
using GroveSpec.Checks.Rules;
using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>
/// How well the first trunk of a container stands, with nothing beside it to go by. It is mostly the largest of those to come, which
/// stands about a third of the way in from one side (common practice, as <see cref="CentredMain"/> has it).
/// </summary>
internal sealed class FirstPlace
{
    private readonly ChoiceCheck centred;
    private readonly (Bearing Right, Length Middle, Length Width) line;
    private readonly Length reach;

    private FirstPlace(ChoiceCheck centred, Bearing from, ContainerOutline outline)
    {
        this.centred = centred;
        line = CentredMain.LineOf(from, outline);
        reach = Length.FromMillimetres(outline.RadiusOfEqualCircleInMillimetres);
        var back = new Bearing(line.Right.Degrees + 90);
        var (least, greatest) = outline.Reach(back);
        Best = [.. new[] { -1, 1 }.Select(side => At(line.Middle + (line.Width * (side / 6.0)), (least + greatest) * 0.5, back))];
    }

    /// <summary>The two places that lose nothing: a third of the way in from either side, in the middle of the depth. They may lie off the soil.</summary>
    public IReadOnlyList<PlanPoint> Best { get; }

    /// <summary>Looks at where the first trunk may stand.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="ground">It with the newcomer.</param>
    /// <returns>Null where others stand, without a container, or where the file mutes the check of the centre line.</returns>
    public static FirstPlace? Of(CheckContext context, GroundCase ground)
    {
        var centred = new ChoiceCheck(context, new Limits(context), "centred-main");
        return ground.Others.Count == 0 && centred.IsOn && ground.Without.Outline is { AreaInSquareMillimetres: > 0 } outline ? new(centred, context.View.Frame.From, outline) : null;
    }

    /// <summary>What a place loses.</summary>
    /// <param name="place">The place.</param>
    /// <returns>
    /// Half of how far it lies from the nearer of the two thirds, against the radius of a circle as large as the container, at most a half; and on
    /// the centre line what the check will weigh once another trunk stands.
    /// </returns>
    public double Loss(PlanPoint place) =>
        (ThinningScore.SoftWeight * Math.Min(1, Best.Min(third => third.DistanceTo(place)) / reach)) + (IsCentred(place) ? centred.Weight : 0);

    /// <summary>Whether a place lies on the centre line, as near as the check counts.</summary>
    /// <param name="place">The place.</param>
    /// <returns>True when it does.</returns>
    public bool IsCentred(PlanPoint place) => CentredMain.IsCentred(line, place, centred.Limit);

    private PlanPoint At(Length across, Length behind, Bearing back) => new(
        (across * line.Right.Rightward) + (behind * back.Rightward),
        (across * line.Right.Backward) + (behind * back.Backward));
}
