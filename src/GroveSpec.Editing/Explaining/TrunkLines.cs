using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Editing.Explaining;

/// <summary>Says what is computed of a trunk.</summary>
internal static class TrunkLines
{
    private const int MostGaps = 6;

    /// <summary>Where a trunk stands, its sizes, its place in the view, the gaps to its neighbours and its rank by size.</summary>
    /// <param name="assessment">The planting.</param>
    /// <param name="trunk">The trunk.</param>
    /// <returns>A line for each thing that is known.</returns>
    public static ImmutableArray<string> Of(Assessment assessment, TrunkState trunk)
    {
        var units = assessment.Units;
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.Add(trunk.Presence switch
        {
            Presence.Planned => "Planned; it does not stand yet.",
            Presence.Removed => "Removed; it stands no longer.",
            _ => Size(assessment, trunk),
        });
        if (trunk.Place is { } place)
        {
            var at = $"{Coordinate(place.X, units)}, {Coordinate(place.Y, units)} {(units == UnitSystem.Inch ? "in" : "mm")}";
            lines.Add(trunk.Trunk.At is null ? $"Stands at {at}, placed from tape readings." : $"Stands at {at}.");
        }
        else
        {
            lines.Add("Its place is not known: it needs at, or tape readings to three others.");
        }

        if (trunk is { Presence: Presence.Standing, Place: not null } && Checker.IsJudged(assessment.State))
        {
            AddView(assessment, trunk, lines);
            AddGaps(assessment, trunk, lines);
            AddRanks(assessment, trunk, lines);
        }

        if (assessment.Planting.RoleOf(trunk.Trunk) is { } role)
        {
            lines.Add(role.Story is { } story ? $"Role {role.Name}: {story.Value}" : $"Role {role.Name}.");
        }

        if (assessment.Planting.IsFixed(trunk.Trunk))
        {
            lines.Add("Fixed: no suggestion moves it.");
        }

        return lines.ToImmutable();
    }

    private static string Size(Assessment assessment, TrunkState trunk)
    {
        var units = assessment.Units;
        var parts = new List<string>();
        if (trunk.Diameter is { } diameter)
        {
            parts.Add(trunk.Trunk.IsGirth && trunk.Diameter == trunk.Trunk.Diameter
                ? $"diameter {LengthWording.Say(diameter.Value, units)}, from a girth of {LengthWording.Say(diameter.Value * Math.PI, units)}"
                : $"diameter {LengthWording.Say(diameter.Value, units)}");
        }

        if (trunk.Height is { } height)
        {
            parts.Add($"height {LengthWording.Say(height.Value, units)}");
        }

        return parts.Count == 0 ? "Its size is not known." : $"{char.ToUpperInvariant(parts[0][0])}{string.Join(", ", parts)[1..]}.";
    }

    private static string Coordinate(Length length, UnitSystem units) => LengthWording.Say(units == UnitSystem.Inch ? length.Inches : length.Millimetres, units == UnitSystem.Inch ? 2 : 1);

    private static void AddView(Assessment assessment, TrunkState trunk, ImmutableArray<string>.Builder lines)
    {
        var view = FrontView.Of(assessment.State);
        for (var index = 0; index < view.Trunks.Length; index++)
        {
            if (view.Trunks[index] is { } seen && seen.Name == trunk.Name)
            {
                var hidden = seen.Hidden is { } share && share.Percent >= 0.5 ? $", {LengthWording.Say(share.Percent, 0)} % of its base hidden" : "";
                lines.Add(string.Create(CultureInfo.InvariantCulture, $"In the view: number {index + 1} of {view.Trunks.Length} from the left, number {seen.Nearness + 1} from the front{hidden}."));
                return;
            }
        }
    }

    private static void AddGaps(Assessment assessment, TrunkState trunk, ImmutableArray<string>.Builder lines)
    {
        var standing = StandingTrunks.Of(assessment.State);
        var index = IndexOf(standing, trunk);
        var near = standing.NeighboursOf(index);
        if (near.IsEmpty)
        {
            return;
        }

        var said = new List<string>();
        foreach (var other in near[..Math.Min(near.Length, MostGaps)])
        {
            var gap = standing.Sections[index].Centre.DistanceTo(standing.Sections[other].Centre);
            said.Add($"{standing.Trunks[other].Name} {LengthWording.Say(gap, assessment.Units)}");
        }

        lines.Add($"To its neighbours, centre to centre: {string.Join(", ", said)}{(near.Length > MostGaps ? " and further ones" : "")}.");
    }

    private static void AddRanks(Assessment assessment, TrunkState trunk, ImmutableArray<string>.Builder lines)
    {
        var said = new List<string>();
        Add("diameter", state => state.Diameter?.Value);
        Add("height", state => state.Height?.Value);
        if (said.Count > 0)
        {
            lines.Add($"By size: {string.Join(", ", said)}.");
        }

        void Add(string what, Func<TrunkState, Length?> size)
        {
            if (size(trunk) is { } own)
            {
                var known = assessment.State.Standing.Select(size).OfType<Length>().ToList();
                said.Add(string.Create(CultureInfo.InvariantCulture, $"number {1 + known.Count(other => other > own)} of {known.Count} by {what}"));
            }
        }
    }

    private static int IndexOf(StandingTrunks standing, TrunkState trunk)
    {
        for (var index = 0; index < standing.Count; index++)
        {
            if (standing.Trunks[index].Name == trunk.Name)
            {
                return index;
            }
        }

        return 0;
    }
}
