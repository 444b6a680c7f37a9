using GroveSpec.Model.Tasks;

namespace GroveSpec.Conformance.Tests.Drawn;

/// <summary>Every view of every sample; the sheet of wire only of those that have any.</summary>
internal static class SampleDrawings
{
    /// <summary>As the command draws them.</summary>
    public static IReadOnlyList<SampleDrawing> All { get; } = Draw("");

    /// <summary>The same with the faces inside, for a renderer that cannot be told of a folder of faces.</summary>
    public static IReadOnlyList<SampleDrawing> WithFaces { get; } = Draw(BuiltInFaces.Rules);

    private static SampleDrawing[] Draw(string faceRules) =>
    [
        .. from sample in SampleFile.All
           let subject = Plates.SubjectOfFile(sample.Path)
           from view in Plates.Views
           where view != "wiring" || subject.State.Planting.Tasks.Any(task => task.Kind.Value == TaskKind.Wire)
           select new SampleDrawing(sample.Name, view, Plates.Draw(view, subject, faceRules)),
    ];
}
