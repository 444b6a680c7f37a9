using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>What tape readings say of the distance between centres.</summary>
internal static class TapeLengths
{
    /// <summary>A reading as a distance from centre to centre.</summary>
    /// <param name="tape">The reading.</param>
    /// <param name="from">The one trunk.</param>
    /// <param name="to">The other.</param>
    /// <returns>Millimetres, above zero; null for a reading of nothing, and for one between bark while a thickness is not known.</returns>
    public static double? BetweenCentres(TapeReading tape, TrunkState from, TrunkState to)
    {
        if (tape.Distance <= Length.Zero)
        {
            return null;
        }

        return !tape.IsBetweenBark ? tape.Distance.Millimetres
            : from.Diameter is { } one && to.Diameter is { } other ? tape.Distance.Millimetres + ((one.Value.Millimetres + other.Value.Millimetres) / 2)
            : null;
    }
}
