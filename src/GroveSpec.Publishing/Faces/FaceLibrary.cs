using System.Reflection;

namespace GroveSpec.Publishing.Faces;

/// <summary>
/// The built-in faces of EB Garamond, under the SIL Open Font Licence 1.1. Its numerals are lining by default.
/// </summary>
public static class FaceLibrary
{
    /// <summary>The family's name as drawings ask for it.</summary>
    public const string FamilyName = "EB Garamond";

    /// <summary>The licence under which the faces are passed on.</summary>
    public static string Licence
    {
        get
        {
            using var reader = new StreamReader(Open("licence.txt"));
            return reader.ReadToEnd();
        }
    }

    /// <summary>A face as TrueType.</summary>
    /// <param name="style">Which.</param>
    /// <returns>The file's bytes, as a stream that the caller closes.</returns>
    internal static Stream TrueType(FaceStyle style) => Open(FileName(style) + ".ttf");

    /// <summary>A face for a page, reduced to the Latin letters and signs.</summary>
    /// <param name="style">Which.</param>
    /// <returns>The file's bytes.</returns>
    internal static byte[] Web(FaceStyle style)
    {
        using var stream = Open(FileName(style) + ".woff2");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static string FileName(FaceStyle style) => style switch
    {
        FaceStyle.Italic => "italic",
        FaceStyle.Medium => "medium",
        _ => "regular",
    };

    private static Stream Open(string name) =>
        Assembly.GetExecutingAssembly().GetManifestResourceStream("GroveSpec.Faces." + name)
        ?? throw new InvalidOperationException($"The face {name} is not built in.");
}
