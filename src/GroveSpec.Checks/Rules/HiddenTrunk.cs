using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Rules;

/// <summary>Nearer trunks cover a trunk as seen from the front.</summary>
internal sealed class HiddenTrunk : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "hidden-trunk",
        Severity = Severity.Warning,
        Limit = new(70, ToleranceUnit.Percent, 1, 100),
        Meaning = "Nearer trunks cover a trunk as seen from where the viewer stands.",
        Explanation = "A trunk that is not seen is not there for the picture, and what peeps out at its side looks like a flaw of the nearer one. The measure is the share of its width at the soil that nearer trunks cover together, in perspective from the viewer's eye.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var found = new List<SeenTrunk>();
        foreach (var trunk in context.View.Trunks)
        {
            if (trunk.Hidden is { } hidden && hidden.Percent >= limit)
            {
                found.Add(trunk);
            }
        }

        return WorstFirst.Make(context, Description, found, trunk => trunk.Hidden!.Value.Share, trunk => [trunk.Trunk], trunk => Tell(context, trunk, limit));
    }

    private Finding Tell(CheckContext context, SeenTrunk trunk, double limit)
    {
        var covering = context.View.Covering(trunk);
        var name = Wording.Name(trunk.Name);
        var by = covering.Length == 1 ? Wording.Name(covering[0].Name) + " covers" : Wording.List([.. covering.Select(other => other.Name)]) + " together cover";
        var share = trunk.Hidden!.Value.Share >= 1 ? "all" : LengthWording.Say(trunk.Hidden.Value.Percent, 0) + " %";
        return Draft.Of(
            context,
            Description,
            "at",
            [trunk.Trunk],
            $"{name} is hidden: seen from the front, {by} {share} of its width at the soil. {Advice(context, trunk, covering[0], limit)}",
            covering.Select(other => other.Trunk))
            with
        {
            Measured = trunk.Hidden.Value.Percent,
            Limit = limit,
            Unit = "%",
            Figures = [new Figure.Ring(trunk.Name)],
        };
    }

    private static string Advice(CheckContext context, SeenTrunk trunk, SeenTrunk cover, double limit)
    {
        if (context.Planting.IsFixed(trunk.Trunk.Trunk))
        {
            return "Its base cannot be moved: turn the planting a little, bring its top out by a lean, or let it stand with a reason.";
        }

        // As much as has to show on one side of the trunk that covers most; what else stands there may ask for more.
        var shown = trunk.Cover.Width * (1 - (limit / 100));
        var (toLeft, toRight) = (trunk.Cover.Left + shown - cover.Cover.Left, cover.Cover.Right - trunk.Cover.Right + shown);
        var (side, inView) = toLeft < toRight ? ("left", toLeft) : ("right", toRight);
        var onSoil = inView * (trunk.Foot.Depth / context.View.Frame.Distance);
        return $"Move it to the viewer's {side} by {LengthWording.Say(Length.FromMillimetres(Math.Ceiling(Math.Max(onSoil.Millimetres, 1))), context.Units)} or more, or let it stand with a reason.";
    }
}
