namespace GroveSpec.Conformance.Tests.Drawn;

/// <summary>The faces that the build has taken in, as files.</summary>
internal static class BuiltInFaces
{
    /// <summary>The folder that holds them.</summary>
    public static string Folder { get; } = Repository.Path("src", "GroveSpec.Publishing", "obj", "faces");

    /// <summary>Rules for a style block that carry the faces themselves.</summary>
    public static string Rules { get; } = Rule("regular", "normal", 400) + Rule("italic", "italic", 400) + Rule("medium", "normal", 500);

    private static string Rule(string file, string style, int weight) =>
        $"@font-face{{font-family:'EB Garamond';font-style:{style};font-weight:{weight};src:url(data:font/ttf;base64,{Convert.ToBase64String(File.ReadAllBytes(Path.Combine(Folder, file + ".ttf")))})}}\n";
}
