using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Containers;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>A trunk's bark is close to the rim.</summary>
internal sealed class NearRim : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "near-rim",
        Severity = Severity.Warning,
        Limit = new(10, ToleranceUnit.Millimetres, 0.1, 1000),
        Meaning = "A trunk stands so close to the rim that its roots have no room on that side.",
        Explanation = "Between bark and rim there must be room for flare and roots, and for a finger that works the soil. The measure is the shortest distance from the bark to the rim.",
        Source = "common practice; the limit, a finger's breadth, is our own choice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        if (context.Outline is not { } outline)
        {
            return [];
        }

        var found = new List<(TrunkState Trunk, Length Room)>();
        foreach (var trunk in context.Standing.Trunks)
        {
            var room = RimRoom.Of(outline, trunk);

            if (IsNear(room, limit))
            {
                found.Add((trunk, room));
            }
        }

        return WorstFirst.Make(context, Description, found, place => -place.Room.Millimetres, place => [place.Trunk], place => Tell(context, place.Trunk, place.Room, limit));
    }

    /// <summary>Whether a trunk stands too near the rim; one that reaches past it is told by off-container alone.</summary>
    /// <param name="room">The room it leaves to the rim.</param>
    /// <param name="limit">The limit in millimetres.</param>
    /// <returns>True when it does.</returns>
    public static bool IsNear(Length room, double limit) => room >= Length.Zero && room.Nanometres < (decimal)limit * Length.NanometresPerMillimetre;

    private Finding Tell(CheckContext context, TrunkState trunk, Length room, double limit)
    {
        var left = room == Length.Zero ? "no room at all" : $"only {LengthWording.Say(room, context.Units)}";
        var missing = LengthWording.Say(Math.Ceiling(Math.Max(limit - room.Millimetres, 0.1)), context.Units);
        var advice = context.Planting.IsFixed(trunk.Trunk)
            ? "Give the planting a wider container, or let it stand with a reason."
            : $"Move it {missing} or more inward, or let it stand with a reason.";
        return Draft.Of(context, Description, "at", [trunk], $"{Wording.Name(trunk.Name)} leaves {left} between its bark and the rim. {advice}") with
        {
            Measured = room.Millimetres,
            Limit = limit,
            Unit = "mm",
            Figures = [new Figure.Ring(trunk.Name)],
        };
    }
}
