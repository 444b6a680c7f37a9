using System.Text;

namespace GroveSpec.Publishing.Faces;

/// <summary>The built-in faces written into a page or a drawing, so that it looks the same with nothing installed.</summary>
public static class PageFaces
{
    /// <summary>The rules that carry the faces: one a style, the face itself inside, so that nothing is fetched.</summary>
    /// <returns>CSS, about 100 KB, the same at every call; it holds no angle brackets, so it may stand in any style block.</returns>
    public static string Rules()
    {
        var rules = new StringBuilder(200_000);
        Write(rules, FaceStyle.Regular, "normal", 400);
        Write(rules, FaceStyle.Italic, "italic", 400);
        Write(rules, FaceStyle.Medium, "normal", 500);
        return rules.ToString();
    }

    private static void Write(StringBuilder rules, FaceStyle style, string slant, int weight)
    {
        // One family name in quotes: it is what the drawings ask for first.
        rules.Append("@font-face{font-family:\"").Append(FaceLibrary.FamilyName).Append("\";font-style:").Append(slant)
            .Append(";font-weight:").Append(weight).Append(";src:url(data:font/woff2;base64,")
            .Append(Convert.ToBase64String(FaceLibrary.Web(style))).Append(") format(\"woff2\")}\n");
    }
}
