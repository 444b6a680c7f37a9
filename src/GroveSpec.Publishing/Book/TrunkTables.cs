using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Craft.Composition;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Roles;
using GroveSpec.Model.States;

namespace GroveSpec.Publishing.Book;

/// <summary>Trunks, roles and readings as tables.</summary>
internal static class TrunkTables
{
    /// <summary>Writes them.</summary>
    /// <param name="page">Where to.</param>
    /// <param name="planting">What is known of the planting.</param>
    /// <param name="units">The units to speak in.</param>
    public static void Write(HtmlText page, Assessment planting, UnitSystem units)
    {
        if (!planting.State.Trunks.IsEmpty)
        {
            page.Raw("<section>\n").Element("h2", "Trunks");
            WriteTrunks(page, planting.State, units);
            page.Raw("</section>\n");
        }

        if (!planting.Planting.Roles.IsEmpty)
        {
            page.Raw("<section>\n").Element("h2", "Roles");
            WriteRoles(page, planting.Planting, units);
            page.Raw("</section>\n");
        }

        if (!planting.Planting.Measured.IsEmpty)
        {
            page.Raw("<section>\n").Element("h2", "Readings");
            WriteReadings(page, planting.Planting, units);
            page.Raw("</section>\n");
        }
    }

    private static void WriteTrunks(HtmlText page, PlantingState state, UnitSystem units)
    {
        var nearest = NearestGaps(state);
        page.Raw("<table>\n").Element("caption", "Sizes are the newest known. Places are from the plan’s origin, to the right and to the back; gaps are from centre to centre.")
            .Raw("<thead><tr>");
        Head(page, ("Trunk", false), ("Role", false), ("Right", true), ("Back", true), ("Diameter", true), ("Girth", true), ("Height", true), ("Nearest", true), ("There", false));
        page.Raw("</tr></thead>\n<tbody>\n");
        foreach (var trunk in state.Trunks)
        {
            page.Raw("<tr><th scope=\"row\">").Own(trunk.Name).Raw("</th><td>").Own(trunk.Trunk.Role?.Value ?? "").Raw("</td>");
            Figure(page, trunk.Place?.X, units);
            Figure(page, trunk.Place?.Y, units);
            Figure(page, trunk.Diameter?.Value, units);
            Figure(page, trunk.Diameter is { } diameter ? Length.FromMillimetres(diameter.Value.Millimetres * Math.PI) : null, units);
            Figure(page, trunk.Height?.Value, units);
            Figure(page, nearest.TryGetValue(trunk.Name, out var gap) ? gap : null, units);
            page.Raw("<td>").Raw(trunk.Presence switch
            {
                Presence.Planned => "planned",
                Presence.Removed => "removed",
                _ => "stands",
            }).Raw("</td></tr>\n");
        }

        page.Raw("</tbody>\n</table>\n");
    }

    private static Dictionary<string, Length> NearestGaps(PlantingState state)
    {
        var standing = StandingTrunks.Of(state);
        var gaps = new Dictionary<string, Length>(StringComparer.Ordinal);
        Span<int> found = stackalloc int[1];
        for (var index = 0; index < standing.Count; index++)
        {
            if (standing.Near(index, Length.Largest, found) > 0)
            {
                gaps[standing.Trunks[index].Name] = standing.Sections[index].Centre.DistanceTo(standing.Sections[found[0]].Centre);
            }
        }

        return gaps;
    }

    private static void WriteRoles(HtmlText page, Planting planting, UnitSystem units)
    {
        page.Raw("<table>\n").Element("caption", "What the trunks are meant to become.").Raw("<thead><tr>");
        Head(page, ("Role", false), ("Trunks", false), ("Figure", false), ("Vigour", false), ("Aims", false), ("Story", false));
        page.Raw("</tr></thead>\n<tbody>\n");
        foreach (var role in planting.Roles)
        {
            var players = string.Join(", ", planting.Trunks.Where(trunk => trunk.Role?.Value == role.Name).Select(trunk => trunk.Name));
            page.Raw("<tr><th scope=\"row\">").Own(role.Name).Raw("</th><td>").Own(players).Raw("</td><td>")
                .Raw(role.Form?.Value switch { Form.Balanced => "balanced", Form.Stout => "stout", Form.Slender => "slender", _ => "" }).Raw("</td><td>")
                .Raw(role.Vigour?.Value switch { Vigour.Push => "push", Vigour.Steady => "steady", Vigour.Restrain => "restrain", _ => "" }).Raw("</td><td>")
                .Text(string.Join("; ", AimsOf(role, units))).Raw("</td><td>").Own(role.Story?.Value ?? "").Raw("</td></tr>\n");
        }

        page.Raw("</tbody>\n</table>\n");
    }

    private static IEnumerable<string> AimsOf(Role role, UnitSystem units)
    {
        foreach (var aim in role.Aims)
        {
            yield return $"{Word(aim.Dimension)} {LengthWording.Say(aim.Target, units)} by {aim.ByYear}";
        }

        foreach (var ceiling in role.Ceilings)
        {
            yield return $"{Word(ceiling.Dimension)} under {LengthWording.Say(ceiling.Limit, units)}";
        }

        if (role.Rank is { } rank)
        {
            yield return $"{rank.Value} in the order of size";
        }
    }

    private static void WriteReadings(HtmlText page, Planting planting, UnitSystem units)
    {
        page.Raw("<table>\n").Element("caption", "What was read, the oldest first.").Raw("<thead><tr>");
        Head(page, ("Day", false), ("Trunk", false), ("Diameter", true), ("Height", true), ("Crown", true));
        page.Raw("</tr></thead>\n<tbody>\n");
        foreach (var day in planting.Measured.OrderBy(day => day.Date))
        {
            foreach (var reading in day.Readings)
            {
                WriteReading(page, day, reading, units);
            }
        }

        page.Raw("</tbody>\n</table>\n");
    }

    private static void WriteReading(HtmlText page, MeasuredDay day, TrunkReading reading, UnitSystem units)
    {
        page.Raw("<tr><td>").Text(DayWords.Day(day.Date)).Raw("</td><th scope=\"row\">").Own(reading.Trunk).Raw("</th>");
        Figure(page, reading.Diameter?.Value, units);
        Figure(page, reading.Height?.Value, units);
        Figure(page, reading.Crown?.Value, units);
        page.Raw("</tr>\n");
    }

    private static string Word(Dimension dimension) => dimension == Dimension.Height ? "height" : "diameter";

    private static void Head(HtmlText page, params ReadOnlySpan<(string Word, bool IsFigure)> columns)
    {
        foreach (var (word, isFigure) in columns)
        {
            page.Raw(isFigure ? "<th scope=\"col\" class=\"figure\">" : "<th scope=\"col\">").Raw(word).Raw("</th>");
        }
    }

    private static void Figure(HtmlText page, Length? length, UnitSystem units) =>
        page.Raw("<td class=\"figure\">").Text(length is { } known ? LengthWording.Say(known, units) : "").Raw("</td>");
}
