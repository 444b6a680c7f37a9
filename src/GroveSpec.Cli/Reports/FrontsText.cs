using GroveSpec.Binding;
using GroveSpec.Checks.Fronts;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing.Timeline;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells for people which fronts are best.</summary>
internal static class FrontsText
{
    /// <summary>Writes the answer for one planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    public static void Write(Assessment planting, FrontsAnswer answer, TextWriter writer, int width, bool isColoured)
    {
        writer.Write(Bold(HarmlessText.OneLine(planting.Planting.Name?.Value ?? planting.File), isColoured));
        writer.Write($", its best fronts{(planting.Date is { } day ? $", as it stands on {DayWords.Day(day)}" : "")}\n\n");
        if (answer.Obstacle is { } obstacle)
        {
            Paragraph.Write(writer, HarmlessText.OneLine(obstacle), "  ", width);
        }

        for (var place = 0; place < answer.Suggestions.Length; place++)
        {
            var (front, why, holds, _) = answer.Suggestions[place];
            Paragraph.Write(writer, $"{Bold(FrontSentences.From(front), isColoured)}, {FrontSentences.Score(front)}.", $"  {place + 1}  ", width);
            Paragraph.Write(writer, HarmlessText.OneLine(why), "     ", width);
            Paragraph.Write(writer, holds, "     ", width);
            WriteLosses(front, writer, width);
            writer.Write('\n');
        }

        if (answer.Now is { } now)
        {
            Paragraph.Write(writer, $"{Bold(FrontSentences.From(now, isNow: true), isColoured)}, {FrontSentences.Score(now)}.", "  -  ", width);
            Paragraph.Write(writer, answer.NowHolds, "     ", width);
            WriteLosses(now, writer, width);
            writer.Write('\n');
        }

        Paragraph.Write(writer, HarmlessText.OneLine(FrontSentences.NotSeen(answer)), "  ", width);
        writer.Write('\n');
    }

    private static void WriteLosses(Front front, TextWriter writer, int width)
    {
        foreach (var finding in front.Findings)
        {
            Paragraph.Write(writer, HarmlessText.OneLine(finding.Message), "     · ", width);
        }

        if (front.Findings.IsEmpty)
        {
            Paragraph.Write(writer, FrontSentences.NothingIsLost, "     ", width);
        }
    }

    private static string Bold(string text, bool isColoured) => isColoured ? $"\u001b[1m{text}\u001b[0m" : text;
}
