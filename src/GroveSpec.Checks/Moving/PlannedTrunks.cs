using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Moving;

/// <summary>The trunks that are planned for a later day and have a place already. The checks look at what stands, and so do the searches.</summary>
internal static class PlannedTrunks
{
    /// <summary>The planned trunks that another would touch.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <param name="trunk">The other; a thickness that is not known counts as none.</param>
    /// <param name="place">Where it is to stand.</param>
    /// <returns>Those whose middle is no farther than both radii, by name.</returns>
    public static ImmutableArray<TrunkState> Touched(PlantingState state, TrunkState trunk, PlanPoint place) =>
    [
        .. state.Trunks
            .Where(other => other is { Presence: Presence.Planned, Place: not null } && other.Name != trunk.Name && other.Place!.Value.DistanceTo(place) * 2 <= Thickness(other) + Thickness(trunk))
            .OrderBy(other => other.Name, StringComparer.Ordinal),
    ];

    /// <summary>Says that one would be touched.</summary>
    /// <param name="who">Who would touch it, such as "At spot 1 G".</param>
    /// <param name="place">The place of that one.</param>
    /// <param name="planned">The planned trunk.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence with what to do.</returns>
    public static string Say(string who, PlanPoint place, TrunkState planned, UnitSystem units)
    {
        var name = Wording.Name(planned.Name);
        return $"{who} would touch {name}, which is planned {LengthWording.Say(planned.Place!.Value.DistanceTo(place), units)} from there, centre to centre, and not looked at while it does not stand. Choose another place for one of them, or ask for a day on which {name} stands.";
    }

    private static Length Thickness(TrunkState trunk) => trunk.Diameter?.Value ?? Length.Zero;
}
