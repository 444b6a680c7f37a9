using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>Places trunks by tape readings to trunks whose place is known.</summary>
/// <remarks>
/// A trunk is placed when it has usable readings to at least three placed trunks that do not stand on one line; with two,
/// or with all on one line, two places would fit and none is chosen. Its place is the least-squares fit of its readings.
/// Trunks placed so serve as marks for others, round by round, until no more can be placed. A reading that the others disagree
/// with is not asked where they place a trunk without it, so that its mistake is not laid on them. A reading between bark is made
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

    /// <summary>Whether there is a trunk without a place and a reading that may give it one.</summary>
    /// <param name="state">A planting on a day.</param>
    /// <returns>False where <see cref="Complete"/> has nothing to do.</returns>
    public static bool IsWanted(PlantingState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return !state.Planting.Tapes.IsEmpty && state.Trunks.Any(trunk => trunk.Place is null);
    }

    /// <summary>Fills in the places that tape readings give.</summary>
    /// <param name="state">A planting on a day.</param>
    /// <param name="distrusted">Readings by their numbers from 0 that place a trunk only where the others do not: those that <see cref="TapeAgreement.Distrusted"/> tells.</param>
    /// <returns>The state with every trunk placed that can be; places that are stated stay as they are. The same readings in any order give the same places.</returns>
    public static PlantingState Complete(PlantingState state, IReadOnlySet<int> distrusted)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(distrusted);
        if (!IsWanted(state))
        {
            return state;
        }

        var trunks = state.Trunks.ToBuilder();
        Place(trunks, ReadingsOf(state, distrusted));
        if (distrusted.Count > 0)
        {
            Place(trunks, ReadingsOf(state, ImmutableHashSet<int>.Empty));
        }

        return state with { Trunks = trunks.ToImmutable() };
    }

    /// <summary>Places all trunks that some readings place.</summary>
    private static void Place(ImmutableArray<TrunkState>.Builder trunks, List<(int Other, double Millimetres)>[] readings)
    {
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
    }

    private static List<(int Other, double Millimetres)>[] ReadingsOf(PlantingState state, IReadOnlySet<int> distrusted)
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

        for (var number = 0; number < state.Planting.Tapes.Length; number++)
        {
            var tape = state.Planting.Tapes[number];
            if (!distrusted.Contains(number) && byName.TryGetValue(tape.From, out var from) && byName.TryGetValue(tape.To, out var to) && from != to
                && TapeLengths.BetweenCentres(tape, state.Trunks[from], state.Trunks[to]) is { } distance)
            {
                readings[from].Add((to, distance));
                readings[to].Add((from, distance));
            }
        }

        return readings;
    }
}
