using System.Collections.Immutable;
using GroveSpec.Binding;
using GroveSpec.Cli.Terminals;
using GroveSpec.Craft.Wire;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Drawing.Wire;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells for people how each wire is cut and wound, and what to buy.</summary>
internal static class WiringText
{
    private const int LabelWidth = 7;

    /// <summary>Writes the wire of one planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="plans">Its wires.</param>
    /// <param name="units">The units to speak in.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    public static void Write(Assessment planting, ImmutableArray<WirePlan> plans, UnitSystem units, TextWriter writer, int width, bool isColoured)
    {
        writer.Write(Bold(HarmlessText.OneLine(planting.Planting.Name?.Value ?? planting.File), isColoured));
        writer.Write(planting.Date is { } day ? $", its wire seen from {DayWords.Day(day)}\n" : ", its wire\n");
        if (plans.IsEmpty)
        {
            Paragraph.Write(writer, "No wire is planned. A wire task says on which trunk, when and with what: task W1 wire on B in early autumn 2027 with aluminium 3 mm, coil 50 deg, span 20 to 160 mm", "  ", width);
            writer.Write('\n');
            return;
        }

        foreach (var plan in plans)
        {
            writer.Write($"\n  {Bold(HarmlessText.Shorten(HarmlessText.OneLine(plan.Trunk.Name), 60), isColoured)} ({HarmlessText.Shorten(HarmlessText.OneLine(plan.Term.Wire.Dated.Task.Name), 60)})\n");
            foreach (var line in WireWords.Of(plan, units))
            {
                Paragraph.Write(writer, HarmlessText.OneLine(line.Text), $"    {line.Label.PadRight(LabelWidth)}  ", width);
            }
        }

        var purchases = WirePurchase.Of(plans);
        writer.Write($"\n  {Bold("To buy", isColoured)}\n");
        foreach (var words in purchases.Select(purchase => WireWords.Buy(purchase, units)).DefaultIfEmpty("nothing: all of it is on, or its length is not known"))
        {
            Paragraph.Write(writer, words, "    ", width);
        }

        writer.Write($"\n  {Bold("Before you start", isColoured)}\n");
        foreach (var caution in WireWords.Cautions(planting.Planting, plans))
        {
            Paragraph.Write(writer, caution, "    ", width);
        }

        writer.Write('\n');
    }

    private static string Bold(string text, bool isColoured) => isColoured ? $"\u001b[1m{text}\u001b[0m" : text;
}
