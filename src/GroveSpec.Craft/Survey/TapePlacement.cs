using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>Places trunks by tape readings to trunks whose place is known.</summary>
/// <remarks>
/// A trunk is placed when it has usable readings to at least three placed trunks that do not stand on one line; with two,
/// or with all on one line, two places would fit and none is chosen. Its place is the least-squares fit of its readings.
/// Trunks placed so serve as marks for others, round by round, until no more can be placed. A reading between bark is made
/// one between centres by both radii, and cannot be used while one of them is not known.
/// </remarks>
public static class TapePlacement
{
    private const int FewestMarks = 3;

    /// <summary>Whether a reading says how far two centres are apart.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="from">The one trunk on the day.</param>
    /// <param name="to">The other.</param>
    /// <returns>False for a gap between bark while the thickness of one of them is not known.</returns>
    public static bool Counts(TapeReading reading, TrunkState from, TrunkState to)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        return TapeLengths.BetweenCentres(reading, from, to) is not null;
    }

    /// <summary>Fills in the places that tape readings give.</summary>
    /// <param name="state">A planting on a day.</param>
    /// <returns>The state with every trunk placed that can be; places that are stated stay as they are. The same readings in any order give the same places.</returns>
    public static PlantingState Complete(PlantingState state)
    {
        if (state.Planting.Tapes.IsEmpty || state.Trunks.All(trunk => trunk.Place is not null))
        {
            return state;
        }

        var trunks = state.Trunks.ToBuilder();
        var readings = ReadingsOf(state);
        var waiting = Enumerable.Range(0, trunks.Count).Where(index => trunks[index].Place is null && readings[index].Count >= FewestMarks).ToList();
        while (waiting.Count > 0)
        {
            // All of a round are placed by those of the rounds before, so that the order of the file does not matter.
            var placed = new List<(int Trunk, PlanPoint Place)>();
            foreach (var index in waiting)
            {
                var marks = readings[index]
                    .Where(reading => trunks[reading.Other].Place is not null)
                    .Select(reading => new Mark(trunks[reading.Other].Place!.Value, reading.Millimetres))
                    .ToList();
                if (Trilateration.Fit(marks) is { } place)
                {
                    placed.Add((index, place));
                }
            }

            foreach (var (index, place) in placed)
            {
                trunks[index] = trunks[index] with { Place = place };
            }

            // Only a trunk with a reading to one that was just placed can have gained a mark.
            waiting = [.. placed
                .SelectMany(one => readings[one.Trunk].Select(reading => reading.Other))
                .Distinct()
                .Where(index => trunks[index].Place is null && readings[index].Count >= FewestMarks)
                .Order()];
        }

        return state with { Trunks = trunks.ToImmutable() };
    }

    private static List<(int Other, double Millimetres)>[] ReadingsOf(PlantingState state)
    {
        var byName = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var index = 0; index < state.Trunks.Length; index++)
        {
            byName.TryAdd(state.Trunks[index].Name, index);
        }

        var readings = new List<(int Other, double Millimetres)>[state.Trunks.Length];
        for (var index = 0; index < readings.Length; index++)
        {
            readings[index] = [];
        }

        foreach (var tape in state.Planting.Tapes)
        {
            if (byName.TryGetValue(tape.From, out var from) && byName.TryGetValue(tape.To, out var to) && from != to
                && TapeLengths.BetweenCentres(tape, state.Trunks[from], state.Trunks[to]) is { } distance)
            {
                readings[from].Add((to, distance));
                readings[to].Add((from, distance));
            }
        }

        return readings;
    }
}
