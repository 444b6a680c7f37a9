using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Rules;

/// <summary>Three neighbouring tops lie on a straight line in the view.</summary>
internal sealed class LevelTops : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "level-tops",
        Severity = Severity.Warning,
        Limit = new(3, ToleranceUnit.Percent, 0.1, 20),
        Meaning = "Three neighbouring tops lie on a straight line as the viewer sees them.",
        Explanation = "The outline over the tops is read like a hill. A straight run in it, level or sloping, looks cut with shears. The measure is how far the middle top stands off the line over the two beside it, in percent of their distance, in the view.",
        Source = "common practice; the limit is our own choice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var tops = context.View.Trunks.Where(trunk => trunk.Top is not null).OrderBy(trunk => trunk.Top!.Value.Across).ToArray();
        var found = new List<(SeenTrunk Left, SeenTrunk Middle, SeenTrunk Right, TopLine Line)>();
        for (var index = 2; index < tops.Length; index++)
        {
            var line = TopLine.Over(tops[index - 2].Top!.Value, tops[index - 1].Top!.Value, tops[index].Top!.Value);
            if (line.IsWithin(limit))
            {
                found.Add((tops[index - 2], tops[index - 1], tops[index], line));
            }
        }

        return WorstFirst.Make(
            context,
            Description,
            found,
            three => -three.Line.Percent,
            three => [three.Middle.Trunk, three.Left.Trunk, three.Right.Trunk],
            three => Tell(context, three, limit));
    }

    private Finding Tell(CheckContext context, (SeenTrunk Left, SeenTrunk Middle, SeenTrunk Right, TopLine Line) three, double limit)
    {
        string left = Wording.Name(three.Left.Name), middle = Wording.Name(three.Middle.Name), right = Wording.Name(three.Right.Name);
        var off = three.Line.Offset == Length.Zero ? "exactly on" : $"only {LengthWording.Say(three.Line.Offset.Magnitude, context.Units)} off";
        var change = three.Line.RiseToClear(limit) * (three.Middle.Top!.Value.Depth / context.View.Frame.Distance);
        var amount = LengthWording.Say(Length.FromMillimetres(Math.Ceiling(Math.Max(change.Millimetres, 1))), context.Units);
        var advice = three.Line.Offset == Length.Zero ? $"Shorten {middle} by {amount} or more, or let it rise as much"
            : three.Line.Offset > Length.Zero ? $"Let {middle} rise by {amount} or more"
            : $"Shorten {middle} by {amount} or more";
        return Draft.Of(
            context,
            Description,
            "height",
            [three.Middle.Trunk, three.Left.Trunk, three.Right.Trunk],
            $"Seen from the front, the tops of {left}, {middle} and {right} lie on one line: the top of {middle} is {off} it, over {LengthWording.Say(three.Line.Length, context.Units)} from {left} to {right} in the view. {advice}, or let the tops stand with a reason.")
            with
        {
            Measured = three.Line.Percent,
            Limit = limit,
            Unit = "%",
            Figures = [new Figure.Tops(three.Left.Name, three.Right.Name)],
        };
    }
}
