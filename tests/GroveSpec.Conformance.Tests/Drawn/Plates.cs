using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Drawing.Wire;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Conformance.Tests.Drawn;

/// <summary>The whole way from text to a drawing.</summary>
internal static class Plates
{
    /// <summary>The views there are.</summary>
    public static readonly string[] Views = ["plan", "front", "timeline", "wiring"];

    /// <summary>Reads, binds and checks a text that uses no other file.</summary>
    /// <param name="text">The text.</param>
    /// <returns>What is drawn of it.</returns>
    public static DrawingSubject SubjectOf(string text) => SubjectOf(AssessmentOf("planting.grove", text));

    /// <summary>Reads, binds and checks a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>What is drawn of it.</returns>
    public static DrawingSubject SubjectOfFile(string path) => SubjectOf(AssessmentOfFile(path));

    /// <summary>Reads, binds and checks a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>All that is known of it.</returns>
    public static Assessment AssessmentOfFile(string path) => AssessmentOf(path, File.ReadAllText(path));

    /// <summary>Draws a view.</summary>
    /// <param name="view">Its name.</param>
    /// <param name="subject">What to draw.</param>
    /// <param name="faceRules">Rules that carry the faces; empty to name them only.</param>
    /// <returns>The drawing.</returns>
    public static string Draw(string view, DrawingSubject subject, string faceRules = "")
    {
        var options = new DrawingOptions { FaceRules = faceRules };
        return view switch
        {
            "plan" => PlanPlate.Draw(subject, options),
            "front" => FrontPlate.Draw(subject, options),
            "wiring" => WirePlate.Draw(subject, options),
            _ => TimelinePlate.Draw(subject, options),
        };
    }

    private static DrawingSubject SubjectOf(Assessment assessment) => new(assessment.State, assessment.Findings);

    /// <summary>All that is known of a text on the day that it names last.</summary>
    /// <param name="path">The path that it is read as.</param>
    /// <param name="text">The text.</param>
    /// <returns>The assessment.</returns>
    public static Assessment AssessmentOf(string path, string text) =>
        Assessment.Of(path, SourceText.FromText(text), new FolderFiles());
}
