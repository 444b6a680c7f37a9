using GroveSpec.Binding;
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
        var count = described.Stems.Length;
        writer.Write(isColoured ? $"\u001b[1m{name}\u001b[0m" : name);
        writer.Write($", how {(count == 1 ? "its one trunk stands" : $"its {count} trunks stand")}{(planting.Date is { } day ? $" on {DayWords.Day(day)}" : "")}\n\n");
        if (count < 2)
        {
            Paragraph.Write(writer, "Spacing begins with two trunks that stand and have a place, sizes with three: there is nothing to tell yet.", "  ", width);
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
        WriteChance(described, writer, width);
        writer.Write('\n');
    }

    private static void WriteLeftOut(StandDescription described, TextWriter writer, int width)
    {
        if (!described.Unplaced.IsEmpty)
        {
            Paragraph.Write(writer, HarmlessText.OneLine($"Left out, because the file gives no place: {StandWords.Row([.. described.Unplaced.Select(trunk => trunk.Name)])}."), "  ", width);
        }

        if (described.Sized.Length < described.Stems.Length)
        {
            Paragraph.Write(writer, HarmlessText.OneLine($"Left out of what is told of sizes, because the file gives no thickness: {StandWords.Row([.. described.Stems.Except(described.Sized).Select(trunk => trunk.Name)])}."), "  ", width);
        }
    }

    private static void WriteChance(StandDescription described, TextWriter writer, int width)
    {
        if (described.Indices.FirstOrDefault(index => index.Chance is not null)?.Chance is { } chance)
        {
            Paragraph.Write(
                writer,
                $"What chance gives was tried {chance.Runs} times with as many trunks, and is told as nineteen of twenty tries had it: for spacing with trunks dropped anywhere {(described.Ground.IsContainer ? "in the container" : "on such ground")}, for neighbours with these thicknesses handed out anew, for shares with thicknesses drawn from a usual spread. None of it is right or wrong. The real stands have 62 to 126 trunks and run from crowded to orderly; so few trunks can be natural and look like any of them.",
                "  ",
                width);
        }
    }
}
