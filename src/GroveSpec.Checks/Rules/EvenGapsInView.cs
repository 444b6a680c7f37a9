using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>Two gaps that follow each other are the same as seen from the front.</summary>
internal sealed class EvenGapsInView : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "even-gaps-in-view",
        Severity = Severity.Warning,
        Limit = new(8, ToleranceUnit.Percent, 0.1, 50),
        Meaning = "Two gaps that follow each other look the same from where the viewer stands.",
        Explanation = "What is uneven from above may still fall into step for the eye, and a fence is what the eye then sees. The gaps are those between trunks that follow each other from left to right, middle to middle at the soil, as the viewer sees them in perspective. Gaps that are even from above as well are told by even-gaps alone.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var found = new List<(SeenTrunk Left, SeenTrunk Middle, SeenTrunk Right, double Difference)>();
        var seen = context.View.Trunks;
        for (var index = 2; index < seen.Length; index++)
        {
            var (left, right) = (Gap(seen[index - 2], seen[index - 1]), Gap(seen[index - 1], seen[index]));
            if (left > Length.Zero && right > Length.Zero && Likeness.IsCloserThan(left, right, limit))
            {
                found.Add((seen[index - 2], seen[index - 1], seen[index], Likeness.DifferenceInPercent(left, right)));
            }
        }

        return WorstFirst.Make(
            context,
            Description,
            found,
            three => -three.Difference,
            three => [three.Middle.Trunk, three.Left.Trunk, three.Right.Trunk],
            three => Tell(context, three, limit));
    }

    private static Length Gap(SeenTrunk left, SeenTrunk right) => right.Foot.Across - left.Foot.Across;

    private Finding Tell(CheckContext context, (SeenTrunk Left, SeenTrunk Middle, SeenTrunk Right, double Difference) three, double limit)
    {
        string left = Wording.Name(three.Left.Name), middle = Wording.Name(three.Middle.Name), right = Wording.Name(three.Right.Name);
        var (first, second) = LengthWording.SayApart(Gap(three.Left, three.Middle), Gap(three.Middle, three.Right), context.Units);
        var apart = three.Difference == 0 ? "the same" : $"{Wording.Percent(three.Difference)} apart";
        TrunkState[] about = [three.Middle.Trunk, three.Left.Trunk, three.Right.Trunk];
        return Draft.Of(
            context,
            Description,
            "at",
            about,
            $"Seen from the front, {middle} stands midway between {left} and {right}: gaps of {first} and {second} in the view, {apart}. {Advice(context, three, limit)}")
            with
        {
            Measured = three.Difference,
            Limit = limit,
            Unit = "%",
            Figures = [new Figure.GapInView(three.Left.Name, three.Middle.Name), new Figure.GapInView(three.Middle.Name, three.Right.Name)],
        };
    }

    private static string Advice(CheckContext context, (SeenTrunk Left, SeenTrunk Middle, SeenTrunk Right, double Difference) three, double limit)
    {
        if (context.Planting.IsFixed(three.Middle.Trunk.Trunk))
        {
            return "Turn the planting a little, or let the gaps stand with a reason.";
        }

        // Moving the middle by m changes the gaps to g − m and G + m, and (g − m) = (1 − p)(G + m) is where the limit is met.
        Length first = Gap(three.Left, three.Middle), second = Gap(three.Middle, three.Right);
        var (shorter, longer) = first <= second ? (first, second) : (second, first);
        var rest = 1 - (limit / 100);
        var inView = (shorter - (longer * rest)) * (1 / (1 + rest));
        var onSoil = inView * (three.Middle.Foot.Depth / context.View.Frame.Distance);
        var side = first <= second ? "left" : "right";
        return $"Move {Wording.Name(three.Middle.Name)} to the viewer's {side} by {LengthWording.Say(Length.FromMillimetres(Math.Ceiling(Math.Max(onSoil.Millimetres, 1))), context.Units)} or more, or let the gaps stand with a reason.";
    }
}
