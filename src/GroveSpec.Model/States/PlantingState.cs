using System.Collections.Immutable;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Times;
using GroveSpec.Model.Trunks;
using NodaTime;

namespace GroveSpec.Model.States;

/// <summary>A planting on a day: which trunks are planned, standing or removed, and the newest sizes on or before it.</summary>
/// <param name="Planting">The planting as written.</param>
/// <param name="Date">The day; null when none was asked for and the file names none.</param>
/// <param name="Trunks">Every trunk in the order of the file.</param>
public sealed record PlantingState(Planting Planting, LocalDate? Date, ImmutableArray<TrunkState> Trunks)
{
    /// <summary>The trunks that stand and whose place is known.</summary>
    public IEnumerable<TrunkState> Standing => Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: not null });

    /// <summary>The planting's state on a day.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="date">The day, or null for no particular one.</param>
    /// <returns>The state, with places as stated; those that tape readings give are not yet filled in.</returns>
    public static PlantingState Of(Planting planting, LocalDate? date)
    {
        var readings = NewestFirst(planting, date);
        return new PlantingState(planting, date, [.. planting.Trunks.Select(trunk => StateOf(planting, trunk, date, readings))]);
    }

    private static TrunkState StateOf(Planting planting, Trunk trunk, LocalDate? date, Dictionary<string, List<TrunkReading>> readings)
    {
        readings.TryGetValue(trunk.Name, out var own);
        return new TrunkState
        {
            Trunk = trunk,
            Presence = PresenceOf(trunk, date, planting.Site?.IsSouthern ?? false),
            Place = trunk.At?.Value,
            Diameter = own?.Find(reading => reading.Diameter is not null)?.Diameter ?? trunk.Diameter,
            Height = own?.Find(reading => reading.Height is not null)?.Height ?? trunk.Height,
            Crown = own?.Find(reading => reading.Crown is not null)?.Crown ?? trunk.Crown,
        };
    }

    private static Presence PresenceOf(Trunk trunk, LocalDate? date, bool isSouthern)
    {
        if (trunk.Removed is { } removed && (date is null || SeasonCalendar.UsualFirstDay(removed.Value, isSouthern) is not { } gone || gone <= date))
        {
            return Presence.Removed;
        }

        if (trunk.Planned is { } planned && (date is null || SeasonCalendar.UsualFirstDay(planned.Value, isSouthern) is not { } due || due > date))
        {
            return Presence.Planned;
        }

        return trunk.Raised is { } raised && date is { } day && raised.Value > day.Year ? Presence.Planned : Presence.Standing;
    }

    private static Dictionary<string, List<TrunkReading>> NewestFirst(Planting planting, LocalDate? date)
    {
        var byTrunk = new Dictionary<string, List<TrunkReading>>(StringComparer.Ordinal);

        // Of two readings on one day the one written later is the newer.
        foreach (var day in planting.Measured.Where(day => date is null || day.Date <= date).Reverse().OrderByDescending(day => day.Date))
        {
            foreach (var reading in day.Readings.Reverse())
            {
                if (!byTrunk.TryGetValue(reading.Trunk, out var list))
                {
                    byTrunk.Add(reading.Trunk, list = []);
                }

                list.Add(reading);
            }
        }

        return byTrunk;
    }
}
