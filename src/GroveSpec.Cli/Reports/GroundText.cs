using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Moving;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells for people where ground is free.</summary>
internal static class GroundText
{
    private const double SquareMillimetresOfASquareCentimetre = 100;
    private const double SquareMillimetresOfASquareInch = 645.16;
    private const double LeastShareTold = 0.005;

    /// <summary>Writes the answer for one planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="units">The units to speak in.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    public static void Write(Assessment planting, GroundAnswer answer, UnitSystem units, TextWriter writer, int width, bool isColoured)
    {
        var name = HarmlessText.OneLine(planting.Planting.Name?.Value ?? planting.File);
        writer.Write(isColoured ? $"\u001b[1m{name}\u001b[0m" : name);
        writer.Write($", free ground{(planting.Date is { } day ? $", as it stands on {DayWords.Day(day)}" : "")}\n\n");
        if (answer.Obstacle is { } obstacle)
        {
            Tell(obstacle);
            writer.Write('\n');
            return;
        }

        Tell(Ground(answer, units));
        if (Takers(answer) is { Length: > 0 } takers)
        {
            Tell(takers);
        }

        writer.Write('\n');
        for (var place = 0; place < answer.Spots.Length; place++)
        {
            var spot = answer.Spots[place];
            Paragraph.Write(writer, HarmlessText.OneLine($"{PlaceWording.Say(spot.Place, units)}. {spot.Why}"), $"  {place + 1}  ", width);
        }

        if (answer.Spots.Length > 0)
        {
            writer.Write('\n');
        }

        foreach (var finding in answer.Anywhere)
        {
            Tell($"Wherever it stands: {finding.Message}");
        }

        foreach (var note in answer.Notes)
        {
            Tell(note);
        }

        if (answer.Anywhere.Length + answer.Notes.Length > 0)
        {
            writer.Write('\n');
        }

        void Tell(string text) => Paragraph.Write(writer, HarmlessText.OneLine(text), "  ", width);
    }

    private static string Ground(GroundAnswer answer, UnitSystem units)
    {
        var trunk = answer.Trunk!;
        var sizes = $"{LengthWording.Say(trunk.Diameter!.Value.Value, units)} thick{(trunk.Height is { } height ? $" and {LengthWording.Say(height.Value, units)} high" : "")}";
        var about = answer.IsOneMore ? $"one more trunk, {sizes}" : $"{trunk.Name}, {sizes}";
        if (answer.Outline.IsEmpty)
        {
            return $"For {about}, no ground is free: it raises a finding wherever it stands. These are the least bad spots:";
        }

        var whole = answer.WholeArea is > 0 and var area ? $", {LengthWording.Say(100 * answer.FreeArea / area, answer.FreeArea / area < 0.0995 ? 1 : 0)} % of the soil" : $", within {LengthWording.Say(answer.Reach!.Value, units)} of what stands, as far as neighbours reach";
        var pieces = answer.Pieces;
        return $"For {about}, {Area(answer.FreeArea, units)} are free{whole}, {(pieces == 0 ? "in slivers" : pieces == 1 ? "in one piece" : $"in {pieces} pieces")}: there it raises nothing that is not found now.";
    }

    private static string Takers(GroundAnswer answer)
    {
        string[] told = [.. answer.Takers.Where(taker => taker.Share >= LeastShareTold).Take(5).Select(taker => $"{taker.Check} {LengthWording.Say(taker.Share * 100, 0)} %")];
        return told.Length == 0 ? "" : $"What takes ground, each place counted once: {string.Join(", ", told)}.";
    }

    private static string Area(double squareMillimetres, UnitSystem units)
    {
        var (value, unit) = units == UnitSystem.Inch ? (squareMillimetres / SquareMillimetresOfASquareInch, "square inches") : (squareMillimetres / SquareMillimetresOfASquareCentimetre, "cm²");
        return $"{LengthWording.Say(value, value < 9.95 ? 1 : 0)} {unit}";
    }
}
