using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Checks;

namespace GroveSpec.Publishing.Book;

/// <summary>
/// What was found, by check: a small drawing of what the check means, why it matters, and each finding with the number
/// that it has in the drawings; then what the file lets stand, with its reasons.
/// </summary>
internal static class FindingsSection
{
    /// <summary>Writes the section.</summary>
    /// <param name="page">Where to.</param>
    /// <param name="planting">What is known of the planting.</param>
    public static void Write(HtmlText page, Assessment planting)
    {
        page.Raw("<section>\n").Element("h2", "What the checks find");
        if (planting.Findings.IsEmpty)
        {
            page.Element("p", "Nothing.");
        }
        else
        {
            page.Element("p class=\"remark\"", "The numbers are those in the drawings.");
        }

        var numbered = planting.Findings.Select((finding, index) => (Finding: finding, Number: index + 1));
        foreach (var group in numbered.GroupBy(one => one.Finding.Check.Name, StringComparer.Ordinal))
        {
            WriteCheck(page, planting, group.First().Finding.Check, [.. group]);
        }

        page.Raw("</section>\n");
        WriteAccepted(page, planting);
    }

    private static void WriteCheck(HtmlText page, Assessment planting, CheckDescription check, IReadOnlyList<(Finding Finding, int Number)> found)
    {
        page.Raw("<article class=\"check\">\n").Raw(Vignettes.Draw(check.Name) ?? "<span class=\"plain\"></span>\n").Raw("<div>\n");
        page.Element("h3", check.Name).Element("p class=\"remark\"", check.Meaning).Raw("<ol>\n");
        foreach (var (finding, number) in found)
        {
            page.Raw("<li><span class=\"ring\">").Raw(number.ToString(CultureInfo.InvariantCulture)).Raw("</span> <span class=\"weight\">")
                .Raw(Weight(finding.Severity)).Raw("</span> ").Text(finding.Message).Raw(" <span class=\"line\">").Text(PlaceOf(planting, finding)).Raw("</span></li>\n");
        }

        page.Raw("</ol>\n").Element("p class=\"why\"", check.Explanation).Element("p class=\"source\"", $"Measure and limit: {check.Source}").Raw("</div>\n</article>\n");
    }

    private static void WriteAccepted(HtmlText page, Assessment planting)
    {
        if (planting.Accepted.IsEmpty && planting.Planting.Muted.IsEmpty)
        {
            return;
        }

        page.Raw("<section>\n").Element("h2", "What is let stand").Raw("<ul>\n");
        foreach (var finding in planting.Accepted)
        {
            page.Raw("<li>").Text(finding.Message);
            if (ReasonOf(planting, finding) is { Length: > 0 } reason)
            {
                page.Raw(" <em>").Own(reason).Raw("</em>");
            }

            page.Raw("</li>\n");
        }

        foreach (var muted in planting.Planting.Muted)
        {
            page.Raw("<li>").Text($"{muted.Check} is not checked in this planting.").Raw(" <em>").Own(muted.Reason).Raw("</em></li>\n");
        }

        page.Raw("</ul>\n</section>\n");
    }

    private static string? ReasonOf(Assessment planting, Finding finding)
    {
        foreach (var accepted in planting.Planting.Accepted)
        {
            if (accepted.Check == finding.Check.Name && accepted.Trunks.Order(StringComparer.Ordinal).SequenceEqual(finding.Trunks.Order(StringComparer.Ordinal)))
            {
                return accepted.Reason;
            }
        }

        return null;
    }

    private static string PlaceOf(Assessment planting, Finding finding)
    {
        var line = planting.TextOf(finding.Place.File).PositionOf(finding.Place.Span.Start).Line + 1;
        return finding.Place.File == planting.File ? $"line {line}" : $"line {line} of {Path.GetFileName(finding.Place.File)}";
    }

    private static string Weight(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "hint",
    };
}
