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
            Tell(obstacle, "  ");
        }

        for (var place = 0; place < answer.Suggestions.Length; place++)
        {
            var suggestion = answer.Suggestions[place];
            Tell(ThinningWords.Order(suggestion.Stand), $"  {place + 1}  ");
            Tell(suggestion.Why, "     ");
            Tell(ThinningWords.NearlyAsGood(suggestion), "     ");
            writer.Write('\n');
        }

        Tell(ThinningWords.NotWeighed(answer), "  ");
        writer.Write('\n');

        void Tell(string text, string lead) => Paragraph.Write(writer, HarmlessText.OneLine(text), lead, width);
    }

    private static string Bold(string text, bool isColoured) => isColoured ? $"\u001b[1m{text}\u001b[0m" : text;
}
