using GroveSpec.Binding;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Sentences;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells for people where ground is free.</summary>
internal static class GroundText
{
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

        Tell(GroundSentences.Ground(answer, units));
        Tell(GroundSentences.Takers(answer));

        writer.Write('\n');
        for (var place = 0; place < answer.Spots.Length; place++)
        {
            Paragraph.Write(writer, HarmlessText.OneLine(GroundSentences.Spot(answer.Spots[place], units)), $"  {place + 1}  ", width);
        }

        if (answer.Spots.Length > 0)
        {
            writer.Write('\n');
        }

        var notes = GroundSentences.Notes(answer);
        foreach (var note in notes)
        {
            Tell(note);
        }

        if (!notes.IsEmpty)
        {
            writer.Write('\n');
        }

        void Tell(string text) => Paragraph.Write(writer, HarmlessText.OneLine(text), "  ", width);
    }
}
