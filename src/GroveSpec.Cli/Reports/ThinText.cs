using GroveSpec.Binding;
using GroveSpec.Checks.Choosing;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing.Timeline;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells for people which trunks to keep.</summary>
internal static class ThinText
{
    /// <summary>Writes the answer for one planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    public static void Write(Assessment planting, ThinningAnswer answer, TextWriter writer, int width, bool isColoured)
    {
        writer.Write(Bold(HarmlessText.OneLine(planting.Planting.Name?.Value ?? planting.File), isColoured));
        writer.Write($", which trunks to keep{(planting.Date is { } day ? $", as it stands on {DayWords.Day(day)}" : "")}\n\n");
        if (answer.Obstacle is { } obstacle)
        {
            Paragraph.Write(writer, HarmlessText.OneLine(obstacle), "  ", width);
        }

        for (var place = 0; place < answer.Suggestions.Length; place++)
        {
            var (stand, why, near) = answer.Suggestions[place];
            var lead = $"  {place + 1}  ";
            Paragraph.Write(writer, HarmlessText.OneLine($"Keep {Row(stand.Kept)}{(stand.TakenOut.IsEmpty ? "" : $"; take out {Row(stand.TakenOut)}")}."), lead, width);
            Paragraph.Write(writer, HarmlessText.OneLine(why), "     ", width);
            if (!near.IsEmpty)
            {
                Paragraph.Write(writer, HarmlessText.OneLine($"Nearly as good: {string.Join("; ", near.Select(Change))}."), "     ", width);
            }

            writer.Write('\n');
        }

        if (answer.Obstacle is null && !answer.WithoutPlace.IsEmpty)
        {
            Paragraph.Write(writer, HarmlessText.OneLine($"Kept and counted without being weighed, because the file gives no place: {Row(answer.WithoutPlace)}."), "  ", width);
        }

        writer.Write('\n');
    }

    private static string Change(ThinningVariant variant) => (variant.Keep, variant.TakeOut) switch
    {
        ({ } keep, { } gone) => $"{keep} in place of {gone}",
        ({ } keep, null) => $"{keep} as well",
        var (_, gone) => $"without {gone}",
    };

    /// <summary>Every name, however many: who goes out with the saw needs all of them.</summary>
    private static string Row(IReadOnlyList<string> names) =>
        names.Count == 1 ? names[0] : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";

    private static string Bold(string text, bool isColoured) => isColoured ? $"\u001b[1m{text}\u001b[0m" : text;
}
