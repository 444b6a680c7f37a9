using System.Text;
using GroveSpec.Checks;
using GroveSpec.Craft.Views;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Drawing.Wire;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;
using GroveSpec.Model.States;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Draws a document.</summary>
internal static class DrawAnswer
{
    private const string Mark = "data-origin=\"";

    /// <summary>A picture of a document.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">Which picture.</param>
    /// <returns>The picture, as the command draws it, and where what it shows is stated.</returns>
    /// <exception cref="RequestException">There is no such picture, or too many trunks stand to be drawn.</exception>
    public static DrawResult Of(OpenDocument document, DrawParams asked)
    {
        var assessment = document.Assessment;
        if (!Checker.IsJudged(assessment.State))
        {
            throw new RequestException(RequestException.RequestFailed, $"More than {Checker.MostTrunks} trunks stand here, and no more are drawn.");
        }

        var subject = new DrawingSubject(assessment.State, assessment.Findings);
        var options = OptionsOf(document);
        var svg = asked.View switch
        {
            "plan" => PlanPlate.Draw(subject, options),
            "front" => FrontPlate.Draw(subject, options),
            "timeline" => TimelinePlate.Draw(subject, options),
            "wiring" => WirePlate.Draw(subject, options),
            _ => throw new RequestException(RequestException.InvalidParameters, "There are the views plan, front, timeline and wiring."),
        };
        return new(document.Version, svg, document.Title, [.. Places(document, [svg])], Trunks(document, asked.View), asked.View == "timeline" ? [.. Tasks(document, subject)] : []);
    }

    /// <summary>How pictures are drawn beside a text.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The options; pictures and guides of one document share them.</returns>
    public static DrawingOptions OptionsOf(OpenDocument document) => new() { Units = document.Settings.Units };

    private static DrawnTrunk[] Trunks(OpenDocument document, string view)
    {
        var state = document.Assessment.State;
        var plan = view == "plan" ? PlanFrame.Of(state, OptionsOf(document)) : null;
        var front = view == "front" ? FrontFrame.Of(state) : null;
        var shown = view == "wiring" ? WirePlate.TrunksOf(state) : null;
        return [.. state.Trunks.Where(trunk => shown?.Contains(trunk.Name) ?? true).Select(trunk => Trunk(document, trunk, GripOf(trunk, plan, front)))];
    }

    private static (double X, double Y)? GripOf(TrunkState trunk, PlanFrame? plan, FrontFrame? front) => trunk.Place is not { } place ? null
        : plan is not null ? plan.PageOf(place)
        : front is not null && trunk.Presence == Presence.Standing && TrunkAxis.TipOf(trunk) is { } top ? front.PageOf(top)
        : null;

    /// <summary>The tasks that the timeline shows, from top to bottom.</summary>
    private static IEnumerable<DrawnTask> Tasks(OpenDocument document, DrawingSubject subject)
    {
        var planting = document.Assessment.Planting;
        return TimelineFrame.Of(subject).Tasks.Select(entry => new DrawnTask(
            entry.Dated.Task.Name,
            entry.Dated.Task.Origin.Id,
            $"{entry.Dated.Task.Name}, {TaskWords.Work(planting, entry.Dated.Task)}: {TaskWords.When(entry.Dated)}",
            entry.X,
            entry.Y));
    }

    private static DrawnTrunk Trunk(OpenDocument document, TrunkState trunk, (double X, double Y)? grip)
    {
        var units = document.Settings.Units;
        var summary = new StringBuilder($"Trunk {trunk.Name}");
        if (trunk.Trunk.Role is { } role)
        {
            summary.Append(", ").Append(role.Value);
        }

        if (trunk.Diameter is { } diameter)
        {
            summary.Append(", ").Append(LengthWording.Say(diameter.Value, units)).Append(" thick");
        }

        if (trunk.Height is { } height)
        {
            summary.Append(", ").Append(LengthWording.Say(height.Value, units)).Append(" high");
        }

        summary.Append(trunk.Presence switch
        {
            Presence.Planned => ", planned",
            Presence.Removed => ", removed",
            _ => "",
        });
        return new(trunk.Name, trunk.Trunk.Origin.Id, trunk.Trunk.At is null || document.Assessment.Planting.IsFixed(trunk.Trunk), summary.ToString(), grip?.X, grip?.Y);
    }

    /// <summary>Every mark in pictures that stands for something in the document's own text.</summary>
    /// <param name="document">The document.</param>
    /// <param name="pictures">The pictures, as whole SVG documents; null for none.</param>
    /// <returns>Where each is stated, each once.</returns>
    public static IEnumerable<DrawnPlace> Places(OpenDocument document, IEnumerable<string?> pictures)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return pictures.OfType<string>().SelectMany(svg => Places(document, svg, seen));
    }

    private static IEnumerable<DrawnPlace> Places(OpenDocument document, string svg, HashSet<string> seen)
    {
        for (var at = svg.IndexOf(Mark, StringComparison.Ordinal); at >= 0; at = svg.IndexOf(Mark, at, StringComparison.Ordinal))
        {
            at += Mark.Length;
            var id = System.Net.WebUtility.HtmlDecode(svg[at..svg.IndexOf('"', at)]);
            var origin = new Model.Origin(id);
            var statement = document.Assessment.Origins.StatementOf(origin);
            if (id != Model.Origin.Default.Id && statement.File == document.Key && statement.Span.Length > 0 && seen.Add(id))
            {
                yield return new(id, document.Positions.RangeOf(statement.Span), document.Positions.RangeOf(document.Assessment.Origins.Locate(origin).Span));
            }
        }
    }
}
