using System.Reflection;

namespace GroveSpec.Publishing.Faces;

/// <summary>
/// The built-in faces of EB Garamond, whose numerals are lining by default, and for the letters that it has not, of Frank Ruhl Libre (Hebrew)
/// and Noto Naskh Arabic; all under the SIL Open Font Licence 1.1.
/// </summary>
public static class FaceLibrary
{
    /// <summary>The family's name as drawings ask for it.</summary>
    public const string FamilyName = "EB Garamond";

    /// <summary>The name of the family for Hebrew.</summary>
    public const string HebrewFamilyName = "Frank Ruhl Libre";

    /// <summary>The name of the family for Arabic.</summary>
    public const string ArabicFamilyName = "Noto Naskh Arabic";

    /// <summary>The licences under which the faces are passed on, one behind the other.</summary>
    public static string Licence => $"{Read("licence.txt")}\n{Read("licence-hebrew.txt")}\n{Read("licence-arabic.txt")}";

    /// <summary>A face as TrueType.</summary>
    /// <param name="style">Which.</param>
    /// <returns>The file's bytes, as a stream that the caller closes.</returns>
    internal static Stream TrueType(FaceStyle style) => Open(FileName(style) + ".ttf");

    /// <summary>A face for a page, reduced to the Latin letters and signs.</summary>
    /// <param name="style">Which.</param>
    /// <returns>The file's bytes; Hebrew and Arabic have none.</returns>
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
        FaceStyle.Hebrew => "hebrew",
        FaceStyle.Arabic => "arabic",
        _ => "regular",
    };

    private static string Read(string name)
    {
        using var reader = new StreamReader(Open(name));
        return reader.ReadToEnd();
    }

    private static Stream Open(string name) =>
        Assembly.GetExecutingAssembly().GetManifestResourceStream("GroveSpec.Faces." + name)
        ?? throw new InvalidOperationException($"The face {name} is not built in.");
}
