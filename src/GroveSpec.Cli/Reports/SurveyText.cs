using GroveSpec.Binding;
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
        writer.Write($", {Count(survey.Readings.Length, "tape reading")} among {Count(survey.Trunks.Length, "trunk")}\n\n");
        SurveyedTrunk[] sought = [.. survey.Trunks.Where(trunk => trunk.Kind != SurveyedPlaceKind.Known)];
        if (sought.Length == 0)
        {
            Tell(survey.Trunks.IsEmpty ? "No trunk is written down." : "The file gives every trunk a place, so that the readings only check them.");
        }

        var column = Math.Min(WidestName, sought.Length == 0 ? 0 : sought.Max(trunk => Short(trunk.Name).Length));
        foreach (var trunk in sought)
        {
            Paragraph.Write(writer, SurveyWords.Place(trunk, units), $"  {Short(trunk.Name).PadRight(column)}  ", width);
        }

        if (sought.Length > 0)
        {
            writer.Write('\n');
        }

        if (survey.IsUnsettled)
        {
            Tell("No places were found that all but a few of the readings meet, so that no reading can be blamed. Survey fewer trunks at first, or give more of them an \"at\".");
        }

        if (survey.IsTooLarge)
        {
            Tell($"More than {TapeSurvey.MostTrunks} trunks without a place hang together by readings, which is more than is sought at once. Give some of them an \"at\", and the rest are found.");
        }

        foreach (var judged in survey.Readings)
        {
            if (SurveyWords.Misfit(judged, units) is { Length: > 0 } misfit)
            {
                Tell(misfit);
            }
        }

        SurveyedReading[] suspects = [.. survey.Readings.Where(judged => judged.Kind == SurveyedReadingKind.MayBeOff)];
        if (suspects.Length > 0)
        {
            Tell(SurveyWords.OneIsOff(suspects, units));
        }

        foreach (var freedom in survey.Freedoms)
        {
            Tell(SurveyWords.Free(freedom));
        }

        if (SurveyWords.AllFit(survey, units) is { Length: > 0 } fits)
        {
            Tell(fits);
        }

        if (sought.Any(trunk => trunk.Ellipse is not null))
        {
            Tell($"{SurveyWords.Precision(survey, units)} Places lie within what is told in 95 of 100 cases.");
        }

        if (sought.Length > 0 || survey.Next is not null)
        {
            Tell(SurveyWords.Next(survey.Next, units));
        }

        writer.Write('\n');

        void Tell(string text) => Paragraph.Write(writer, HarmlessText.OneLine(text), "  ", width);
    }

    private static string Short(string name) => HarmlessText.Shorten(HarmlessText.OneLine(name), WidestName);

    private static string Count(int count, string what) => $"{count} {what}{(count == 1 ? "" : "s")}";
}
