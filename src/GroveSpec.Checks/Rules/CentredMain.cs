using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>The largest trunk stands on the centre line of the container as the viewer sees it.</summary>
internal sealed class CentredMain : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "centred-main",
        Severity = Severity.Warning,
        Limit = new(8, ToleranceUnit.Percent, 0, 50),
        Meaning = "The largest trunk stands on the centre line of the container.",
        Explanation = "On the centre line the largest trunk cuts the picture into equal halves and leaves the others no weight to balance. A place about a third of the way in is where most growers put it. The measure is the distance from its centre to the middle of the container, across the view, in percent of the container's width as the viewer sees it.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        if (context.Outline is not { } outline || context.Standing.Count < 2 || LargestFirst(context.Standing.Trunks).FirstOrDefault() is not { } largest)
        {
            return [];
        }

        var (offset, width) = OffCentre(context.View.Frame.From, outline, largest);
        var distance = offset.Magnitude;
        if (!Likeness.IsAtMostPart(distance, width, limit))
        {
            return [];
        }

        var percent = 100.0 * distance.Nanometres / width.Nanometres;
        var name = Wording.Name(largest.Name);
        var stands = distance == Length.Zero
            ? $"stands on the centre line of the container"
            : $"stands {LengthWording.Say(distance, context.Units)} to the viewer's {(offset < Length.Zero ? "left" : "right")} of the container's centre line, {Wording.Percent(percent)} of its width of {LengthWording.Say(width, context.Units)}";
        var needed = LengthWording.Say(Length.FromMillimetres(Math.Floor(((width * (limit / 100)) - distance).Millimetres) + 1), context.Units);
        var side = distance == Length.Zero ? "to either side" : $"further to the {(offset < Length.Zero ? "left" : "right")}";
        var advice = context.Planting.IsFixed(largest.Trunk)
            ? "Set the planting off the middle when it is next repotted, or let it stand with a reason."
            : $"Move it {needed} or more {side}, or let it stand with a reason.";
        return
        [
            Draft.Of(context, Description, "at", [largest], $"{name}, the largest trunk, {stands}. {advice}") with
            {
                Measured = percent,
                Limit = limit,
                Unit = "%",
                Weight = -percent,
                Figures = [new Figure.Ring(largest.Name)],
            },
        ];
    }

    /// <summary>Whether a trunk would be told if it were the largest of several.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="trunk">A trunk that stands and has a place.</param>
    /// <param name="limit">The limit in percent of the container's width.</param>
    /// <returns>True when it stands in the middle; false without a container.</returns>
    public static bool IsCentred(CheckContext context, TrunkState trunk, double limit)
    {
        if (context.Outline is not { } outline)
        {
            return false;
        }

        return IsCentred(context.View.Frame.From, outline, trunk, limit);
    }

    /// <summary>Whether a trunk would be told from a bearing if it were the largest of several.</summary>
    /// <param name="from">The bearing at which the viewer stands.</param>
    /// <param name="outline">The container's rim.</param>
    /// <param name="trunk">A trunk that stands and has a place.</param>
    /// <param name="limit">The limit in percent of the container's width.</param>
    /// <returns>True when it stands in the middle.</returns>
    public static bool IsCentred(Bearing from, ContainerOutline outline, TrunkState trunk, double limit) =>
        IsCentred(LineOf(from, outline), trunk.Place!.Value, limit);

    /// <summary>Whether a place lies on the centre line, as near as counts.</summary>
    /// <param name="line">The line.</param>
    /// <param name="place">The place.</param>
    /// <param name="limit">The limit in percent of the container's width.</param>
    /// <returns>True when it does.</returns>
    public static bool IsCentred((Bearing Right, Length Middle, Length Width) line, PlanPoint place, double limit)
    {
        var offset = OffCentre(line, place);
        return Likeness.IsAtMostPart(offset.Magnitude, line.Width, limit);
    }

    /// <summary>The centre line of a container as a viewer sees it.</summary>
    /// <param name="from">The bearing at which the viewer stands.</param>
    /// <param name="outline">The container's rim.</param>
    /// <returns>The viewer's right, how far in that direction the middle of the container lies, and how wide the container is.</returns>
    public static (Bearing Right, Length Middle, Length Width) LineOf(Bearing from, ContainerOutline outline)
    {
        // Facing the viewer's way, the viewer's right hand lies a quarter turn before the bearing of the place they stand at.
        var right = new Bearing(from.Degrees - 90);
        var (least, greatest) = outline.Reach(right);
        return (right, (least + greatest) * 0.5, greatest - least);
    }

    /// <summary>Trunks whose diameter is known, the widest first; of equals the tallest, then the first by name.</summary>
    /// <param name="trunks">The trunks, by name.</param>
    /// <returns>The trunks.</returns>
    public static IEnumerable<TrunkState> LargestFirst(IEnumerable<TrunkState> trunks) => trunks
        .Where(trunk => trunk.Diameter is not null)
        .OrderByDescending(trunk => trunk.Diameter!.Value.Value)
        .ThenByDescending(trunk => trunk.Height?.Value ?? Length.Zero);

    /// <summary>How far to the viewer's right of the container's centre line a trunk stands, and how wide the container is.</summary>
    internal static (Length Offset, Length Width) OffCentre(Bearing from, ContainerOutline outline, TrunkState trunk)
    {
        var line = LineOf(from, outline);
        return (OffCentre(line, trunk.Place!.Value), line.Width);
    }

    private static Length OffCentre((Bearing Right, Length Middle, Length Width) line, PlanPoint place) =>
        (place.X * line.Right.Rightward) + (place.Y * line.Right.Backward) - line.Middle;
}
