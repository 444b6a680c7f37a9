using GroveSpec.Binding;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Timeline;

namespace GroveSpec.Publishing.Book;

/// <summary>The work as a table, with the cautions that go with it.</summary>
internal static class WorkTables
{
    /// <summary>Writes them.</summary>
    /// <param name="page">Where to.</param>
    /// <param name="planting">What is known of the planting.</param>
    public static void Write(HtmlText page, Assessment planting)
    {
        if (planting.Planting.Tasks.IsEmpty)
        {
            return;
        }

        page.Raw("<section>\n").Element("h2", "Work")
            .Raw("<table>\n").Element("caption", "Days follow from the site’s frosts by rules of thumb; what is seen on the tree goes before them.")
            .Raw("<thead><tr><th scope=\"col\">Task</th><th scope=\"col\">What</th><th scope=\"col\">On</th><th scope=\"col\">When</th><th scope=\"col\">Note</th></tr></thead>\n<tbody>\n");
        foreach (var dated in TaskDates.Of(planting.Planting))
        {
            var task = dated.Task;
            page.Raw("<tr><th scope=\"row\">").Own(task.Name).Raw("</th><td>").Own(TaskWords.Kind(task)).Raw("</td><td>")
                .Own(string.Join(", ", TaskWords.Target(planting.Planting, task))).Raw("</td><td>")
                .Text(TaskWords.When(dated)).Raw("</td><td>").Own(task.Note?.Value ?? "").Raw("</td></tr>\n");
        }

        page.Raw("</tbody>\n</table>\n");
        var cautions = Cautions.Of(planting.Planting);
        if (!cautions.IsEmpty)
        {
            page.Raw("<aside class=\"cautions\" aria-label=\"Cautions\">\n").Element("h3", "Before you start");
            foreach (var caution in cautions)
            {
                page.Element("p", caution);
            }

            page.Raw("</aside>\n");
        }

        page.Raw("</section>\n");
    }
}
