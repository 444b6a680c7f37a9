using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Nudging;

/// <summary>Says what moves come to.</summary>
public static class NudgeWords
{
    /// <summary>What to keep in mind where trunks are bent.</summary>
    public const string CareOfBending = "Whether the wood of a trunk bears its bend is not looked at here: see the sheet of wires, bend by degrees and over weeks, and stop where it resists.";

    /// <summary>What to do with one trunk.</summary>
    /// <param name="move">The move.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>A sentence, such as "Move B 6 mm toward 120 deg, to 22, -18.5 mm."</returns>
    public static string Order(NudgedTrunk move, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(move);
        var (name, way) = (Wording.Name(move.Name), Fine(move.Distance, units));
        var toward = string.Create(CultureInfo.InvariantCulture, $"toward {Math.Round(move.Toward.Degrees) % 360} deg ({Wording.Toward(move.Toward)})");
        if (move.IsMoved)
        {
            return $"Move {name} {way} {toward}, {Moving.PlaceWording.Say(move.Place, units).Replace("at ", "to ", StringComparison.Ordinal)}.";
        }

        if (move.Lean is not { } lean)
        {
            return $"Bend {name} until its tip has gone {way} {toward}, its foot left where it is.";
        }

        var stands = lean.FromUpright.Degrees == 0 ? "stands upright" : string.Create(CultureInfo.InvariantCulture, $"leans {lean.FromUpright.Degrees} deg toward {lean.Toward.Degrees} deg");
        var height = move.Height is { } up ? $"; it is then {LengthWording.Say(up, units)} high" : "";
        return $"Bend {name} until it {stands}: its tip goes {way} {toward}{height}.";
    }

    /// <summary>What moves clear and what they leave.</summary>
    internal static string Why(NudgeSuggestion suggestion, ImmutableArray<Finding> now, UnitSystem units)
    {
        var number = now.Sum(finding => 1 + finding.Untold);
        var way = suggestion.Moves.Length == 1 ? $"One trunk goes {Fine(suggestion.Distance, units)}" : $"{suggestion.Moves.Length} trunks go {Fine(suggestion.Distance, units)} in all";
        var left = suggestion.LeftCount == 0 ? "nothing" : $"{suggestion.LeftCount} ({Wording.Kinds(suggestion.Left)})";
        var weighed = suggestion.LeftCount < number ? "" : $": {(suggestion.LeftCount == number ? "as many" : "more")}, but they weigh less, an error as much as three warnings, a hint half of one";
        return $"{way}, and the checks of composition then find {left}, where now they find {number}{weighed}.";
    }

    private static string Fine(Length length, UnitSystem units) => units == UnitSystem.Inch
        ? $"{LengthWording.Say(length.Inches, 3)} in"
        : $"{LengthWording.Say(length.Millimetres, 1)} mm";
}
