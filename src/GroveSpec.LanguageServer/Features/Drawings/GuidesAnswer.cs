using GroveSpec.Checks;
using GroveSpec.Checks.Ground;
using GroveSpec.Drawing;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Draws guides for a trunk that is being moved.</summary>
internal static class GuidesAnswer
{
    private const string None = "<g class=\"guides\"></g>";

    /// <summary>The guides of a trunk: the ground that is free for it, as the command ground finds it.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">The trunk.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The guides; an empty group in views that have none.</returns>
    /// <exception cref="RequestException">The text has changed since the picture was drawn.</exception>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static GuidesResult Of(OpenDocument document, GuidesParams asked, CancellationToken cancellation)
    {
        DragAnswer.CheckVersion(document, asked.Version);
        var state = document.Assessment.State;
        if (asked.View != "plan" || !Checker.IsJudged(state))
        {
            return new(document.Version, None);
        }

        var context = document.Assessment.ToContext();
        var ground = FreeGround.FindOutline(context, new GroundWish(null, null, asked.Trunk), AtOnce.Do, cancellation);
        return new(document.Version, PlanGuides.Draw(
            state, DrawAnswer.OptionsOf(document), asked.Trunk, Checker.LimitOf(context, "three-in-line"), Checker.LimitOf(context, "even-gaps"), ground.Obstacle is null ? ground : null));
    }
}
