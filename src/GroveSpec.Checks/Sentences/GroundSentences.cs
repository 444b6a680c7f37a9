using System.Collections.Immutable;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Moving;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Sentences;

/// <summary>Says what was found where ground is looked for. Names stand in it as the file writes them.</summary>
public static class GroundSentences
{
    private const double SquareMillimetresOfASquareCentimetre = 100;
    private const double SquareMillimetresOfASquareInch = 645.16;
    private const double LeastShareTold = 0.005;

    /// <summary>How much ground is free, and for what.</summary>
    /// <param name="answer">What was found, with no obstacle.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence.</returns>
    public static string Ground(GroundAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var trunk = answer.Trunk!;
        var sizes = $"{LengthWording.Say(trunk.Diameter!.Value.Value, units)} thick{(trunk.Height is { } height ? $" and {LengthWording.Say(height.Value, units)} high" : "")}";
        var about = answer.IsOneMore ? $"one more trunk, {sizes}" : $"{trunk.Name}, {sizes}";
        if (answer.Outline.IsEmpty)
        {
            return $"For {about}, no ground is free: it raises a finding wherever it stands. These are the least bad spots:";
        }

        var whole = answer.WholeArea is > 0 and var area ? $", {LengthWording.Say(100 * answer.FreeArea / area, answer.FreeArea / area < 0.0995 ? 1 : 0)} % of the soil" : $", within {LengthWording.Say(answer.Reach!.Value, units)} of what stands, as far as neighbours reach";
        var pieces = answer.Pieces;
        return $"For {about}, {Area(answer.FreeArea, units)} are free{whole}, {(pieces == 0 ? "in slivers" : pieces == 1 ? "in one piece" : $"in {pieces} pieces")}: there it raises nothing that is not found {(answer.IsOneMore ? "now" : "without it")}.{(answer.IsTooNarrow ? " No place there is wide enough to be set by hand, so these are the least bad spots:" : "")}";
    }

    /// <summary>How much ground is free and for what, and which checks take the rest.</summary>
    /// <param name="answer">What was found, with no obstacle.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>One sentence, or two where a check takes much.</returns>
    public static ImmutableArray<string> Sum(GroundAnswer answer, UnitSystem units) => Takers(answer) is { Length: > 0 } takers ? [Ground(answer, units), takers] : [Ground(answer, units)];

    /// <summary>Which checks take the rest.</summary>
    /// <param name="answer">What was found, with no obstacle.</param>
    /// <returns>A sentence; an empty text where none takes much.</returns>
    public static string Takers(GroundAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        string[] told = [.. answer.Takers.Where(taker => taker.Share >= LeastShareTold).Take(5).Select(taker => $"{taker.Check} {LengthWording.Say(taker.Share * 100, 0)} %")];
        return told.Length == 0 ? "" : $"What takes ground, each place counted once: {string.Join(", ", told)}.";
    }

    /// <summary>A spot: where it is and why.</summary>
    /// <param name="spot">The spot.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Sentences, such as "at 22, -18.5 mm. It may be set 4 mm off …".</returns>
    public static string Spot(GroundSpot spot, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(spot);
        return $"{PlaceWording.Say(spot.Place, units)}. {spot.Why}";
    }

    /// <summary>What a grower has to know besides.</summary>
    /// <param name="answer">What was found.</param>
    /// <returns>What it raises wherever it stands, then the notes, each a sentence.</returns>
    public static ImmutableArray<string> Notes(GroundAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Anywhere.Select(finding => $"Wherever it stands: {finding.Message}"), .. answer.Notes];
    }

    private static string Area(double squareMillimetres, UnitSystem units)
    {
        var (value, unit) = units == UnitSystem.Inch ? (squareMillimetres / SquareMillimetresOfASquareInch, "square inches") : (squareMillimetres / SquareMillimetresOfASquareCentimetre, "cm²");
        return $"{LengthWording.Say(value, value < 9.95 ? 1 : 0)} {unit}";
    }
}
