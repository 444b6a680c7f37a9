using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Drawing.Wire;
using GroveSpec.Model.Tasks;
using GroveSpec.Publishing.Faces;

namespace GroveSpec.Publishing.Book;

/// <summary>
/// A book of plantings: one page with drawings, findings and tables that opens in any browser, prints on A4 and Letter,
/// and asks for nothing from outside. Its content policy allows its own one style block, by its hash, and the faces it carries.
/// </summary>
public static class BookWriter
{
    /// <summary>Writes the page.</summary>
    /// <param name="plantings">What is known of each planting, in the order in which they come; at least one.</param>
    /// <param name="options">How.</param>
    /// <returns>A whole HTML document that is well-formed XML too, the same for the same plantings and options.</returns>
    /// <exception cref="ArgumentException">There is no planting.</exception>
    public static string Write(ImmutableArray<Assessment> plantings, BookOptions options)
    {
        if (plantings.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A book needs a planting.", nameof(plantings));
        }

        var styles = new List<string> { PageStyle.Rules };
        var body = new HtmlText();
        if (plantings.Length > 1)
        {
            WriteContents(body, plantings);
        }

        for (var index = 0; index < plantings.Length; index++)
        {
            WritePlanting(body, plantings[index], index, options, styles);
        }

        return Page(plantings, options, styles, body.ToString());
    }

    private static string Page(ImmutableArray<Assessment> plantings, BookOptions options, List<string> styles, string body)
    {
        var style = new StringBuilder("\n");
        if (options.CarriesFaces)
        {
            style.Append(PageFaces.Rules());
        }

        foreach (var rules in styles.Distinct())
        {
            style.Append(rules).Append('\n');
        }

        var block = style.ToString();
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(block)));
        var title = plantings.Length == 1 ? NameOf(plantings[0]) : $"{plantings.Length} plantings";
        return new HtmlText()
            .Raw("<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n<meta charset=\"utf-8\"/>\n")
            .Raw($"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'sha256-{hash}'; font-src data:; base-uri 'none'; form-action 'none'\"/>\n")
            .Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<meta name=\"referrer\" content=\"no-referrer\"/>\n")
            .Element("title", title)
            .Raw("<style>").Raw(block).Raw("</style>\n</head>\n<body>\n<main>\n").Raw(body).Raw("</main>\n")
            .Raw(options.CarriesFaces
                ? "<footer class=\"imprint\"><p>Set in EB Garamond, which is carried in this page under the SIL Open Font Licence 1.1.</p></footer>\n"
                : "")
            .Raw("</body>\n</html>\n")
            .ToString();
    }

    private static void WriteContents(HtmlText body, ImmutableArray<Assessment> plantings)
    {
        body.Element("h1", $"{plantings.Length} plantings").Raw("<nav class=\"contents-list\" aria-label=\"Plantings\"><ol class=\"contents\">\n");
        for (var index = 0; index < plantings.Length; index++)
        {
            body.Raw($"<li><a href=\"#planting-{index + 1}\">").Own(NameOf(plantings[index])).Raw("</a></li>\n");
        }

        body.Raw("</ol></nav>\n");
    }

    private static void WritePlanting(HtmlText body, Assessment planting, int index, BookOptions options, List<string> styles)
    {
        var id = $"planting-{index + 1}";
        body.Raw($"<section class=\"planting\" id=\"{id}\" aria-labelledby=\"{id}-name\">\n<h1 id=\"{id}-name\">").Own(NameOf(planting)).Raw("</h1>\n");
        body.Raw("<p class=\"remark\">").Text(PlantingWords.Remark(planting)).Raw("</p>\n");
        if (planting.Planting.Concept is { } concept)
        {
            body.Raw("<p class=\"concept\">").Own(concept.Value).Raw("</p>\n");
        }

        var subject = new DrawingSubject(planting.State, planting.Findings);
        var drawing = new DrawingOptions { Units = options.Units, TellsFindings = false };
        body.Raw("<div class=\"plates\">\n");
        WritePlate(body, styles, PlanPlate.Draw(subject, drawing with { IdPrefix = $"p{index + 1}-plan-", Heading = "From above" }));
        WritePlate(body, styles, FrontPlate.Draw(subject, drawing with { IdPrefix = $"p{index + 1}-front-", Heading = "As it is seen" }));
        if (!planting.Planting.Tasks.IsEmpty)
        {
            WritePlate(body, styles, TimelinePlate.Draw(subject, drawing with { IdPrefix = $"p{index + 1}-year-", Heading = "Through the year" }));
        }

        if (planting.Planting.Tasks.Any(task => task.Kind.Value == TaskKind.Wire))
        {
            WritePlate(body, styles, WirePlate.Draw(subject, drawing with { IdPrefix = $"p{index + 1}-wire-", Heading = "On the bench" }));
        }

        body.Raw("</div>\n");
        FindingsSection.Write(body, planting);
        TrunkTables.Write(body, planting, options.Units);
        WorkTables.Write(body, planting);
        new DecisionsSection(body, planting, options.Units, (word, heading) => drawing with { IdPrefix = $"p{index + 1}-{word}", Heading = heading }, plate => WritePlate(body, styles, plate)).Write();
        SpeciesSection.Write(body, planting.Planting);
        body.Raw("</section>\n");
    }

    private static void WritePlate(HtmlText body, List<string> styles, string svg)
    {
        var plate = InlinePlate.Of(svg);
        styles.Add(plate.Style);
        body.Raw("<figure>\n").Raw(plate.Picture).Raw("</figure>\n");
    }

    private static string NameOf(Assessment planting) => planting.Planting.Name is { Value.Length: > 0 } name ? name.Value : "A planting without a name";
}
