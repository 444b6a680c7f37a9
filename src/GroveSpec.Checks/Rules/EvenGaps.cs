using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>Two neighbouring gaps are the same.</summary>
internal sealed class EvenGaps : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "even-gaps",
        Severity = Severity.Warning,
        Limit = new(8, ToleranceUnit.Percent, 0.1, 50),
        Meaning = "Two neighbouring gaps are as long as each other.",
        Explanation = "Gaps of one length read as measured out, even where the middle trunk stands off the line. Of each trunk the gaps to its neighbours are compared two by two, where no third trunk stands in them; centre to centre, the shorter in percent of the longer.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit) => WorstFirst.Make(
        context,
        Description,
        Craft.Composition.EvenGaps.Find(context.Standing, limit),
        gap => -gap.Difference,
        gap => Trunks(context, gap),
        gap => Tell(context, gap, limit));

    private static TrunkState[] Trunks(CheckContext context, EvenGap gap) =>
        [context.Standing.Trunks[gap.Trunk], context.Standing.Trunks[gap.Near], context.Standing.Trunks[gap.Far]];

    private Finding Tell(CheckContext context, EvenGap gap, double limit)
    {
        var trunks = Trunks(context, gap);
        string middle = Wording.Name(trunks[0].Name), near = Wording.Name(trunks[1].Name), far = Wording.Name(trunks[2].Name);
        var (shorter, longer) = LengthWording.SayApart(gap.Shorter, gap.Longer, context.Units);
        var distances = (shorter == longer ? $"{shorter} each" : $"{shorter} and {longer}")
            + (gap.Difference == 0 ? "" : $", {Wording.Percent(gap.Difference)} apart");
        return Draft.Of(context, Description, "at", trunks, $"{middle} stands as far from {near} as from {far}: {distances}. {Advice(context, gap, limit, trunks)}") with
        {
            Measured = gap.Difference,
            Limit = limit,
            Unit = "%",
            Figures = [new Figure.Gap(trunks[0].Name, trunks[1].Name), new Figure.Gap(trunks[0].Name, trunks[2].Name)],
        };
    }

    private static string Advice(CheckContext context, EvenGap gap, double limit, TrunkState[] trunks)
    {
        string middle = Wording.Name(trunks[0].Name), near = Wording.Name(trunks[1].Name), far = Wording.Name(trunks[2].Name);
        var rest = 1 - (limit / 100);
        var closer = LengthWording.Say(Up(gap.Shorter - (gap.Longer * rest)), context.Units);
        var further = LengthWording.Say(Up((gap.Shorter * (1 / rest)) - gap.Longer), context.Units);
        if (!context.Planting.IsFixed(trunks[1].Trunk))
        {
            return $"Bring {near} nearer to {middle} by {closer} or more, or let the gaps stand with a reason.";
        }

        return context.Planting.IsFixed(trunks[2].Trunk)
            ? "Neither can be moved: part the gaps by lean or crown, or let them stand with a reason."
            : $"Take {far} further from {middle} by {further} or more, or let the gaps stand with a reason.";
    }

    private static Length Up(Length move) => Length.FromMillimetres(Math.Ceiling(Math.Max(move.Millimetres, 1)));
}
