using GroveSpec.Binding;
using GroveSpec.Checks.Nudging;
using GroveSpec.Checks.Sentences;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells for people which moves clear the findings.</summary>
internal static class NudgeText
{
    /// <summary>Writes the answer for one planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="units">The units to speak in.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    public static void Write(Assessment planting, NudgeAnswer answer, UnitSystem units, TextWriter writer, int width, bool isColoured)
    {
        var name = HarmlessText.OneLine(planting.Planting.Name?.Value ?? planting.File);
        writer.Write(isColoured ? $"\u001b[1m{name}\u001b[0m" : name);
        writer.Write($", the smallest moves{(planting.Date is { } day ? $", as it stands on {DayWords.Day(day)}" : "")}\n\n");
        if (answer.Obstacle is { } obstacle)
        {
            Tell(obstacle, "  ");
        }

        for (var place = 0; place < answer.Suggestions.Length; place++)
        {
            var suggestion = answer.Suggestions[place];
            Tell(suggestion.Why, $"  {place + 1}  ");
            foreach (var move in suggestion.Moves)
            {
                Tell(NudgeWords.Order(move, units), "     ");
            }

            foreach (var left in NudgeSentences.Left(suggestion))
            {
                Tell(left, "     ");
            }

            writer.Write('\n');
        }

        foreach (var remark in NudgeSentences.Remarks(answer))
        {
            Tell(remark, "  ");
        }

        writer.Write('\n');

        void Tell(string text, string lead) => Paragraph.Write(writer, HarmlessText.OneLine(text), lead, width);
    }
}
