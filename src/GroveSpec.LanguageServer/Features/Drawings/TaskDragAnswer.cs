using GroveSpec.Drawing;
using GroveSpec.Editing.Placing;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;

namespace GroveSpec.LanguageServer.Features.Drawings;

/// <summary>Writes into the text by how many days a task was moved in the timeline.</summary>
internal static class TaskDragAnswer
{
    private const double Farthest = 1e6;

    /// <summary>A task that was let go somewhere.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">Which task, and where.</param>
    /// <returns>The edits, or why it is not moved.</returns>
    /// <exception cref="RequestException">The text has changed since the picture was drawn, or the place is no number.</exception>
    public static DragResult Of(OpenDocument document, TaskDragParams asked)
    {
        DragAnswer.CheckVersion(document, asked.Version);
        if (!(Math.Abs(asked.X) <= Farthest))
        {
            throw new RequestException(RequestException.InvalidParameters, "The place lies far beyond the picture.");
        }

        var frame = TimelineFrame.Of(new DrawingSubject(document.Assessment.State, document.Assessment.Findings));
        return frame.DaysTo(asked.Task, asked.X) is { } days
            ? DragAnswer.Result(document, TaskPlacing.Move(document.Assessment, asked.Task, days), null)
            : new(document.Version, [], Refusal: $"{asked.Task} has no place in this timeline.");
    }

    /// <summary>A task that is moved by days.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">Which task, and how far.</param>
    /// <returns>The edits, or why it is not moved.</returns>
    /// <exception cref="RequestException">The text has changed since the picture was drawn.</exception>
    public static DragResult Of(OpenDocument document, TaskStepParams asked)
    {
        DragAnswer.CheckVersion(document, asked.Version);
        return DragAnswer.Result(document, TaskPlacing.Move(document.Assessment, asked.Task, asked.Days), null);
    }
}
