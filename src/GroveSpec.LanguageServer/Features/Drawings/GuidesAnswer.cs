using GroveSpec.Checks;
using GroveSpec.Drawing;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Draws guides for a trunk that is being moved.</summary>
internal static class GuidesAnswer
{
    /// <summary>The guides of a trunk.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">The trunk.</param>
    /// <returns>The guides; an empty group in views that have none.</returns>
    /// <exception cref="RequestException">The text has changed since the picture was drawn.</exception>
    public static GuidesResult Of(OpenDocument document, GuidesParams asked)
    {
        DragAnswer.CheckVersion(document, asked.Version);
        var context = document.Assessment.ToContext();
        return new(document.Version, asked.View == "plan" && Checker.IsJudged(document.Assessment.State)
            ? PlanGuides.Draw(document.Assessment.State, DrawAnswer.OptionsOf(document), asked.Trunk, Checker.LimitOf(context, "three-in-line"), Checker.LimitOf(context, "even-gaps"))
            : "<g class=\"guides\"></g>");
    }
}
