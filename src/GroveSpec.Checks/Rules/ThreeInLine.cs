using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Composition;
using GroveSpec.Model;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>A straight rod could pass through the middle of three trunks.</summary>
internal sealed class ThreeInLine : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "three-in-line",
        Severity = Severity.Warning,
        Limit = new(0.5, ToleranceUnit.Ratio, 0.01, 2),
        Meaning = "A straight rod could pass through the middle of three trunks.",
        Explanation = "Three trunks on one line read as a row, and a row reads as planted by a hand. The measure is the smallest share of their radii within which one line passes all three centres: at a half, a rod laid through them would still go through the inner half of each. From seven trunks on only neighbours count, since a line across the whole planting is not seen for the trunks between. A large planting always has some such lines by chance; mend those that are seen from where the viewer stands.",
        Source = "common practice; the closed form is derived beside the code, and the number that chance gives follows Behrend on the Sylvester problem",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var found = RodSearch.Find(context.Standing, limit);
        if (found.IsEmpty)
        {
            return [];
        }

        var chance = Chance(context, limit);
        return WorstFirst.Make(
            context,
            Description,
            found,
            rod => -rod.Closeness,
            rod => Trunks(context, rod),
            rod => Tell(context, rod, limit, chance));
    }

    private static TrunkState[] Trunks(CheckContext context, (int End, int Middle, int OtherEnd, double Closeness) rod) =>
        [context.Standing.Trunks[rod.Middle], context.Standing.Trunks[rod.End], context.Standing.Trunks[rod.OtherEnd]];

    private static string Chance(CheckContext context, double limit)
    {
        if (context.Outline is not { } outline)
        {
            return "";
        }

        var expected = ChanceLines.OfRods(context.Standing, limit, outline);
        var number = expected < 0.05 ? "fewer than 0.1" : LengthWording.Say(expected, expected < 9.95 ? 1 : 0);
        return $" Chance alone would give about {number} such {(number == "1" ? "line" : "lines")} with {context.Standing.Count} trunks in this container.";
    }

    private Finding Tell(CheckContext context, (int End, int Middle, int OtherEnd, double Closeness) rod, double limit, string chance)
    {
        var trunks = context.Standing.Trunks;
        var sections = context.Standing.Sections;
        var (left, right) = IsLeft(sections[rod.End].Centre, sections[rod.OtherEnd].Centre) ? (rod.End, rod.OtherEnd) : (rod.OtherEnd, rod.End);
        var measure = RodThroughThree.Of(sections[left], sections[rod.Middle], sections[right]);
        string first = Wording.Name(trunks[left].Name), middle = Wording.Name(trunks[rod.Middle].Name), last = Wording.Name(trunks[right].Name);
        var stands = measure.Offset == Length.Zero
            ? $"{middle} stands exactly on the straight line from {first} to {last}"
            : $"{middle} stands only {LengthWording.Say(measure.Offset, context.Units)} off the straight line from {first} to {last}";
        var closeness = LengthWording.Say(rod.Closeness * 100, 0);
        return Draft.Of(
            context,
            Description,
            "at",
            Trunks(context, rod),
            $"{first}, {middle} and {last} stand in line: {stands}, so that one rod would pass within {closeness} % of each trunk's radius of its centre. {Advice(context, rod, left, right, measure, limit)}{chance}")
            with
        {
            Measured = rod.Closeness,
            Limit = limit,
            Figures = [new Figure.Rod(sections[left].Centre, sections[right].Centre)],
        };
    }

    private static bool IsLeft(PlanPoint one, PlanPoint other) => one.X != other.X ? one.X < other.X : one.Y <= other.Y;

    private static string Advice(CheckContext context, (int End, int Middle, int OtherEnd, double Closeness) rod, int left, int right, RodThroughThree measure, double limit)
    {
        var mover = FirstFree(context, rod.Middle, left, right);
        if (mover is not { } free)
        {
            return context.Planting.EffectiveHabit == Habit.Group
                ? "All three are fixed: let the line stand with a reason, or turn the planting so that it is not seen along its length."
                : "Their bases cannot be moved: part them by lean or crown, take one out, or let the line stand with a reason.";
        }

        var position = free == left ? 0 : free == rod.Middle ? 1 : 2;
        var move = measure.MoveToClear(position, limit);
        var way = measure.Offset == Length.Zero
            ? $"square to the line, {Wording.Toward(measure.WayOut(position))} or the other way"
            : $"square to the line, {Wording.Toward(measure.WayOut(position))}";
        return $"Move {Wording.Name(context.Standing.Trunks[free].Name)} by {LengthWording.Say(RoundedUp(move), context.Units)} or more {way}, or let the line stand with a reason.";
    }

    private static Length RoundedUp(Length move) => Length.FromMillimetres(Math.Ceiling(move.Millimetres));

    private static int? FirstFree(CheckContext context, int middle, int left, int right)
    {
        foreach (var index in (ReadOnlySpan<int>)[middle, left, right])
        {
            if (!context.Planting.IsFixed(context.Standing.Trunks[index].Trunk))
            {
                return index;
            }
        }

        return null;
    }
}
