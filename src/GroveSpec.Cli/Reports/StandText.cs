using GroveSpec.Binding;
using GroveSpec.Checks.Standing;
using GroveSpec.Cli.Terminals;
using GroveSpec.Craft.Stand;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells for people how naturally a planting stands.</summary>
internal static class StandText
{
    private const int Column = 12;

    /// <summary>Writes one planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="described">How it stands.</param>
    /// <param name="units">The units to speak in.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    public static void Write(Assessment planting, StandDescription described, UnitSystem units, TextWriter writer, int width, bool isColoured)
    {
        var name = HarmlessText.OneLine(planting.Planting.Name?.Value ?? planting.File);
        writer.Write(isColoured ? $"\u001b[1m{name}\u001b[0m" : name);
        writer.Write($", {StandWords.Heading(described)}{(planting.Date is { } day ? $" on {DayWords.Day(day)}" : "")}\n\n");
        if (described.Stems.Length < 2)
        {
            Paragraph.Write(writer, StandWords.TooFew, "  ", width);
            WriteLeftOut(described, writer, width);
            writer.Write('\n');
            return;
        }

        Paragraph.Write(writer, HarmlessText.OneLine($"{StandWords.Nearest(described, units)} {StandWords.Sum(described)}"), "  ", width);
        foreach (var index in described.Indices)
        {
            writer.Write('\n');
            Paragraph.Write(writer, HarmlessText.OneLine(StandWords.Tell(described, index.Kind)), $"  {StandWords.Heading(index.Kind).PadRight(Column)}", width);
            if (index.Value is not null && StandWords.RealStands(index.Kind) is { Length: > 0 } stands)
            {
                Paragraph.Write(writer, stands, new string(' ', Column + 2), width);
            }
        }

        writer.Write('\n');
        WriteLeftOut(described, writer, width);
        Paragraph.Write(writer, StandWords.Chance(described), "  ", width);
        writer.Write('\n');
    }

    private static void WriteLeftOut(StandDescription described, TextWriter writer, int width)
    {
        foreach (var told in StandWords.LeftOut(described))
        {
            Paragraph.Write(writer, HarmlessText.OneLine(told), "  ", width);
        }
    }
}
