using GroveSpec.Binding;
using GroveSpec.Checks.Surveying;
using GroveSpec.Cli.Terminals;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells a survey for people.</summary>
internal static class SurveyText
{
    private const int WidestName = 32;

    /// <summary>Writes the survey of one planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="units">The units to speak in.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    public static void Write(Assessment planting, TapeSurvey survey, UnitSystem units, TextWriter writer, int width, bool isColoured)
    {
        var name = HarmlessText.OneLine(planting.Planting.Name?.Value ?? planting.File);
        writer.Write(isColoured ? $"\u001b[1m{name}\u001b[0m" : name);
        writer.Write($", {SurveyWords.Heading(survey)}\n\n");
        SurveyedTrunk[] sought = [.. SurveyWords.Sought(survey)];
        Tell(SurveyWords.NothingSought(survey));
        var column = Math.Min(WidestName, sought.Length == 0 ? 0 : sought.Max(trunk => Short(trunk.Name).Length));
        foreach (var trunk in sought)
        {
            Paragraph.Write(writer, SurveyWords.Place(trunk, units), $"  {Short(trunk.Name).PadRight(column)}  ", width);
        }

        if (sought.Length > 0)
        {
            writer.Write('\n');
        }

        foreach (var note in SurveyWords.Notes(survey, units))
        {
            Tell(note);
        }

        writer.Write('\n');

        void Tell(string text) => Paragraph.Write(writer, HarmlessText.OneLine(text), "  ", width);
    }

    private static string Short(string name) => HarmlessText.Shorten(HarmlessText.OneLine(name), WidestName);
}
