using GroveSpec.Checks.Moving;
using GroveSpec.Drawing;
using GroveSpec.Editing.Placing;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;
using GroveSpec.Model.Quantities;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Writes into the text where a trunk was moved in the picture.</summary>
internal static class DragAnswer
{
    private const double Farthest = 1e6;

    /// <summary>A trunk that was let go somewhere.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">Which trunk, and where.</param>
    /// <returns>The edits, or why it is not moved.</returns>
    /// <exception cref="RequestException">The text has changed since the picture was drawn, or the place is no number.</exception>
    public static DragResult Of(OpenDocument document, DragParams asked)
    {
        CheckVersion(document, asked.Version);
        if (!(Math.Abs(asked.X) <= Farthest && Math.Abs(asked.Y) <= Farthest))
        {
            throw new RequestException(RequestException.InvalidParameters, "The place lies far beyond the picture.");
        }

        return asked.View == "front"
            ? Reshape(document, asked.Trunk, (frame, top) => frame.PlaceAt(asked.X, asked.Y, top))
            : Move(document, asked.Trunk, (frame, _) => frame.PlaceAt(asked.X, asked.Y));
    }

    /// <summary>A trunk that is moved by steps.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">Which trunk, and how far.</param>
    /// <returns>The edits, or why it is not moved.</returns>
    /// <exception cref="RequestException">The text has changed since the picture was drawn, or the step is no number.</exception>
    public static DragResult Of(OpenDocument document, StepParams asked)
    {
        CheckVersion(document, asked.Version);
        if (!(Math.Abs(asked.Right) <= Farthest && Math.Abs(asked.Back) <= Farthest))
        {
            throw new RequestException(RequestException.InvalidParameters, "The step is far too long.");
        }

        if (asked.View != "front")
        {
            var step = HandStep.Of(document.Settings.Units).Millimetres;
            return Move(document, asked.Trunk, (_, foot) => PlanPoint.FromMillimetres(foot.X.Millimetres + (asked.Right * step), foot.Y.Millimetres + (asked.Back * step)));
        }

        return Reshape(document, asked.Trunk, (frame, top) =>
        {
            if (TrunkPlacing.FootOf(document.Assessment, asked.Trunk) is not { } foot || frame.View.See(top) is not { } seen || frame.View.See(new(foot.X, foot.Y, Length.Zero)) is null)
            {
                return null;
            }

            // A degree to the right in the picture, at the trunk's own depth.
            var height = Math.Max(1, top.Z.Millimetres + asked.Back);
            var side = Math.Tan(asked.Right * Math.PI / 180) * height;
            var scale = frame.View.Distance / seen.Depth;
            var turned = frame.View.PlaceOf(seen with { Across = Length.FromMillimetres(seen.Across.Millimetres + (side * scale)) });
            return turned with { Z = Length.FromMillimetres(height) };
        });
    }

    /// <summary>Refuses what was asked for a picture of an older text.</summary>
    /// <param name="document">The newest text.</param>
    /// <param name="version">The version that the picture was drawn of.</param>
    /// <exception cref="RequestException">It is not the newest.</exception>
    public static void CheckVersion(OpenDocument document, int version)
    {
        if (document.Version != version)
        {
            throw new RequestException(RequestException.ContentModified, "The text has changed since this picture was drawn.");
        }
    }

    private static DragResult Move(OpenDocument document, string trunk, Func<PlanFrame, PlanPoint, PlanPoint> to)
    {
        var frame = PlanFrame.Of(document.Assessment.State, DrawAnswer.OptionsOf(document));
        var placement = TrunkPlacing.Move(document.Assessment, trunk, to(frame, TrunkPlacing.FootOf(document.Assessment, trunk) ?? PlanPoint.Origin));
        return Result(document, placement, frame.PageOf(placement.Reached.Plan));
    }

    private static DragResult Reshape(OpenDocument document, string trunk, Func<FrontFrame, SpacePoint, SpacePoint?> to)
    {
        var frame = FrontFrame.Of(document.Assessment.State);
        if (TrunkPlacing.TopOf(document.Assessment, trunk) is not { } top || to(frame, top) is not { } wanted)
        {
            return new(document.Version, [], Refusal: $"The top of {trunk} is not known: write its place and height first.");
        }

        var placement = TrunkPlacing.Reshape(document.Assessment, trunk, wanted);
        return Result(document, placement, placement.IsRefused ? null : frame.PageOf(placement.Reached));
    }

    /// <summary>What came of a move, as it is sent.</summary>
    /// <param name="document">The document.</param>
    /// <param name="placement">What came of it.</param>
    /// <param name="spot">Where it comes to stand in the picture; null where that is not told.</param>
    /// <returns>The edits, or why nothing is moved.</returns>
    public static DragResult Result(OpenDocument document, Placement placement, (double X, double Y)? spot) => placement.IsRefused
        ? new(document.Version, [], Refusal: placement.Says)
        : new(document.Version, [.. placement.Edits.Select(document.Positions.EditOf)], placement.Says, spot?.X, spot?.Y);
}
