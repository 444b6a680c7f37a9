using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Composition;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Rules;

/// <summary>Two trunks cannot stand where they do: their bark touches or overlaps.</summary>
internal sealed class Touching : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "touching",
        Severity = Severity.Error,
        Meaning = "Two trunks take up the same ground: their bark touches or overlaps.",
        Explanation = "The distance between the centres is no more than both radii together, so one of the figures is wrong, or the trunks have to part. The trunks of a clump share one base and may meet there; of a clump it is told only when the centre of one stands within the bark of another.",
        Source = "the language",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var isClump = context.Planting.EffectiveHabit == Habit.Clump;
        return WorstFirst.Make(
            context,
            Description,
            [.. Contacts.Find(context.Standing, isClump)],
            contact => -contact.Gap.Millimetres,
            contact => [context.Standing.Trunks[contact.Thinner], context.Standing.Trunks[contact.Thicker]],
            contact => Tell(context, contact, isClump));
    }

    private Finding Tell(CheckContext context, (int Thinner, int Thicker, Length Gap) contact, bool isClump)
    {
        var thinner = context.Standing.Trunks[contact.Thinner];
        var thicker = context.Standing.Trunks[contact.Thicker];
        string one = Wording.Name(thinner.Name), other = Wording.Name(thicker.Name);
        var distance = thinner.Place!.Value.DistanceTo(thicker.Place!.Value);
        var radii = ((thinner.Diameter?.Value ?? Length.Zero) + (thicker.Diameter?.Value ?? Length.Zero)) * 0.5;
        var message = distance == Length.Zero
            ? $"{one} and {other} stand at the very same place. Measure where one of them stands, or take it out."
            : isClump
            ? $"{one} stands within {other}: its centre is {LengthWording.Say(distance, context.Units)} from that of {other}, which is {LengthWording.Say(thicker.Diameter?.Value ?? Length.Zero, context.Units)} thick. Measure both again."
            : contact.Gap == Length.Zero
            ? $"{one} and {other} touch: their centres are {LengthWording.Say(distance, context.Units)} apart, just as much as both radii together. Part them, or measure both again."
            : $"{one} and {other} stand in each other: their centres are {LengthWording.Say(distance, context.Units)} apart and their radii add up to {LengthWording.Say(radii, context.Units)}, so the bark would overlap by {LengthWording.Say(-contact.Gap, context.Units)}. Part them, or measure both again.";
        return Draft.Of(context, Description, "at", [thinner, thicker], message) with
        {
            Measured = contact.Gap.Millimetres,
            Limit = 0,
            Unit = "mm",
            Figures = [new Figure.Ring(thinner.Name), new Figure.Ring(thicker.Name)],
        };
    }
}
