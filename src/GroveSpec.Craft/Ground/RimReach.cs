using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>The room that a newcomer leaves to the rim at one place after another. One serves one thread.</summary>
/// <param name="outline">The rim.</param>
/// <param name="diameter">The newcomer's diameter.</param>
public sealed class RimReach(ContainerOutline outline, Length diameter)
{
    private const int Kept = 4;

    private readonly (PlanPoint Place, Length Room)[] known = new (PlanPoint, Length)[Kept];
    private int count;
    private PlanPoint last;
    private double lastRoom = double.NegativeInfinity;

    /// <summary>The shortest distance from its bark to the rim, as <see cref="RimRoom"/> has it.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The distance, negative when the bark reaches past the rim.</returns>
    public Length Room(PlanPoint place)
    {
        // The same place is asked for again and again, first for a guess and then to be sure.
        for (var index = 0; index < Math.Min(count, Kept); index++)
        {
            if (known[index].Place == place)
            {
                (last, lastRoom) = (place, known[index].Room.Millimetres);
                return known[index].Room;
            }
        }

        // Half an odd number of nanometres is rounded up, on the safe side.
        var room = outline.SignedDistance(place) - new Length(diameter.Nanometres - (diameter.Nanometres / 2));
        (last, lastRoom) = (place, room.Millimetres);
        known[count % Kept] = (place, room);
        count = count == (2 * Kept) - 1 ? Kept : count + 1;
        return room;
    }

    /// <summary>Whether a place surely leaves more room than asked: a step takes away no more room than it is long.</summary>
    /// <param name="place">The place.</param>
    /// <param name="millimetres">The room asked for.</param>
    /// <returns>True when it does; false when that has to be measured.</returns>
    public bool IsWellWithin(PlanPoint place, double millimetres) => IsNearer(place, lastRoom - millimetres - 0.01);

    /// <summary>Whether a place surely lies beyond the rim, or reaches past it.</summary>
    /// <param name="place">The place.</param>
    /// <returns>True when it does; false when that has to be measured.</returns>
    public bool IsWellBeyond(PlanPoint place) => IsNearer(place, -lastRoom - 0.01);

    private bool IsNearer(PlanPoint place, double millimetres)
    {
        double dx = (place.X - last.X).Millimetres, dy = (place.Y - last.Y).Millimetres;
        return millimetres > 0 && double.IsFinite(millimetres) && (dx * dx) + (dy * dy) < millimetres * millimetres;
    }
}
