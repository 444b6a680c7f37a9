using GroveSpec.Model;
using GroveSpec.Model.Species;

namespace GroveSpec.Publishing.Book;

/// <summary>What is known of the planting's species, each value with its source.</summary>
internal static class SpeciesSection
{
    /// <summary>Writes it; nothing for a planting whose species have no profile.</summary>
    /// <param name="page">Where to.</param>
    /// <param name="planting">The planting.</param>
    public static void Write(HtmlText page, Planting planting)
    {
        var profiles = planting.Trunks.Select(planting.SpeciesOf).Append(planting.Species?.Value).Distinct(StringComparer.Ordinal)
            .Select(planting.ProfileOf).OfType<SpeciesProfile>().ToList();
        if (profiles.Count == 0)
        {
            return;
        }

        page.Raw("<section>\n").Element("h2", profiles.Count == 1 ? "The species" : "The species, one by one");
        foreach (var profile in profiles)
        {
            WriteProfile(page, profile);
        }

        page.Raw("</section>\n");
    }

    private static void WriteProfile(HtmlText page, SpeciesProfile profile)
    {
        page.Raw("<table>\n<caption>").Own(profile.Botanical?.Value ?? profile.Name);
        if (profile.Common is { } common)
        {
            page.Raw(", ").Own(common.Value);
        }

        page.Raw("</caption>\n<thead><tr><th scope=\"col\">What</th><th scope=\"col\">Value</th><th scope=\"col\">Source</th></tr></thead>\n<tbody>\n");
        if (profile.Leaves is { } leaves)
        {
            Row(page, "Leaves", leaves.Value switch
            {
                LeafHabit.Deciduous => "bare in winter",
                LeafHabit.DeciduousConifer => "needles, bare in winter",
                LeafHabit.SemiEvergreen => "bare only in hard winters",
                LeafHabit.Conifer => "needles or scales all year",
                LeafHabit.Tropical => "all year, with no cold rest",
                _ => "all year",
            }, leaves.Source);
        }

        if (profile.Hardiness is { } hardiness)
        {
            Row(page, "Hardiness zones, in the ground", $"{hardiness.Value.Coldest} to {hardiness.Value.Warmest}", hardiness.Source);
        }

        if (profile.Growth is { } growth)
        {
            Row(page, "Growth", growth.Value switch { GrowthPace.Slow => "slow", GrowthPace.Fast => "fast", _ => "medium" }, growth.Source);
        }

        if (profile.Flush is { } flush)
        {
            Row(page, "Flushes", flush.Value switch
            {
                Flush.Single => "once, in spring",
                Flush.Partial => "once, and in part again",
                Flush.Repeated => "again and again while it is warm",
                _ => "all year",
            }, flush.Source);
        }

        foreach (var caution in profile.Cautions)
        {
            Row(page, "Caution", caution.Value, caution.Source);
        }

        page.Raw("</tbody>\n</table>\n");
    }

    private static void Row(HtmlText page, string what, string value, string source) =>
        page.Raw("<tr><th scope=\"row\">").Raw(what).Raw("</th><td>").Own(value).Raw("</td><td class=\"source\">").Own(source).Raw("</td></tr>\n");
}
