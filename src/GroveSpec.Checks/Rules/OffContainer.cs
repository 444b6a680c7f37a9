using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>A trunk cannot stand where it does: it reaches past the rim.</summary>
internal sealed class OffContainer : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "off-container",
        Severity = Severity.Error,
        Meaning = "A trunk stands outside the container, or its bark reaches past the rim.",
        Explanation = "Either the place, the diameter or the container's size is wrong, or the origin is not where the file takes it to be: the container's centre for all but a slab. The measure is the shortest distance from the rim to the far side of the bark.",
        Source = "the language",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        if (context.Outline is not { } outline)
        {
            return [];
        }

        var found = new List<(TrunkState Trunk, Length Beyond)>();
        foreach (var trunk in context.Standing.Trunks)
        {
            var room = RimRoom.Of(outline, trunk);
            if (room < Length.Zero)
            {
                found.Add((trunk, -room));
            }
        }

        return WorstFirst.Make(context, Description, found, place => place.Beyond.Millimetres, place => [place.Trunk], place => Tell(context, place.Trunk, place.Beyond));
    }

    private Finding Tell(CheckContext context, TrunkState trunk, Length beyond)
    {
        var name = Wording.Name(trunk.Name);
        var isOutside = context.Outline!.SignedDistance(trunk.Place!.Value) < Length.Zero;
        var message = isOutside
            ? $"{name} stands outside the container, and its bark reaches {LengthWording.Say(beyond, context.Units)} past the rim. Measure its place again: places are counted from the {(context.Planting.Container is Model.Containers.Container.Slab ? "origin of the slab's corners" : "middle of the container")}."
            : $"The bark of {name} reaches {LengthWording.Say(beyond, context.Units)} past the rim. Move it inward by as much and room for its roots, or measure its place and thickness again.";
        return Draft.Of(context, Description, "at", [trunk], message) with
        {
            Measured = beyond.Millimetres,
            Limit = 0,
            Unit = "mm",
            Figures = [new Figure.Ring(trunk.Name)],
        };
    }
}
