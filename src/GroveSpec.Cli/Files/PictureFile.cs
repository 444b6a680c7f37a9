using System.Text;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Commands;
using GroveSpec.Cli.Terminals;
using GroveSpec.Publishing.Raster;

namespace GroveSpec.Cli.Files;

/// <summary>In which form a drawing is written, and what it then holds.</summary>
internal static class PictureFile
{
    /// <summary>The form that was asked for, else the one that the output's name ends in, else SVG.</summary>
    /// <param name="written">What stands behind <c>--format</c>; null where it was left out.</param>
    /// <param name="path">The output; null for standard output.</param>
    /// <returns>The form.</returns>
    /// <exception cref="UsageException">There is no such form.</exception>
    public static PictureFormat FormatOf(string? written, string? path) => FormatOf(written, path, ", or say which form with --format");

    /// <summary>The form that the output's name ends in, else SVG, for a command that has no <c>--format</c>.</summary>
    /// <param name="path">The output; null for standard output.</param>
    /// <returns>The form.</returns>
    /// <exception cref="UsageException">There is no such form.</exception>
    public static PictureFormat FormatOf(string? path) => FormatOf(null, path, "");

    private static PictureFormat FormatOf(string? written, string? path, string otherwise)
    {
        if (written is not null)
        {
            return SharedOptions.Choose("--format", written, [("svg", PictureFormat.Svg), ("png", PictureFormat.Png), ("pdf", PictureFormat.Pdf)]);
        }

        // The name decides only where it names a file; a folder's dots mean nothing.
        return Path.GetExtension(path)?.ToLowerInvariant() switch
        {
            null or "" or ".svg" => PictureFormat.Svg,
            ".png" => PictureFormat.Png,
            ".pdf" => PictureFormat.Pdf,
            _ when path!.EndsWith('/') || Directory.Exists(path) => PictureFormat.Svg,
            var ending => throw new UsageException($"A drawing can be written as .svg, .png or .pdf; {HarmlessText.OneLine(ending)} is none of them. Name another file{otherwise}."),
        };
    }

    /// <summary>The page of a PDF that was asked for, else one as large as the drawing.</summary>
    /// <param name="written">What stands behind <c>--paper</c>; null where it was left out.</param>
    /// <param name="form">The form in which the drawing is written.</param>
    /// <returns>The page.</returns>
    /// <exception cref="UsageException">There is no such page, or the form has none.</exception>
    public static PdfPage PageOf(string? written, PictureFormat form)
    {
        if (written is not null && form != PictureFormat.Pdf)
        {
            throw new UsageException("--paper is for PDF; name a .pdf file, or leave it out.");
        }

        return SharedOptions.Choose("--paper", written ?? "drawing", [("drawing", PdfPage.Drawing), ("a4", PdfPage.A4), ("letter", PdfPage.Letter)]);
    }

    /// <summary>A form's word, which is also the ending of its files.</summary>
    /// <param name="form">The form.</param>
    /// <returns>The word.</returns>
    public static string Word(PictureFormat form) => form switch
    {
        PictureFormat.Png => "png",
        PictureFormat.Pdf => "pdf",
        _ => "svg",
    };

    /// <summary>A drawing in a form.</summary>
    /// <param name="svg">The drawing.</param>
    /// <param name="form">The form.</param>
    /// <param name="page">The page of a PDF.</param>
    /// <returns>The whole file.</returns>
    public static byte[] Render(string svg, PictureFormat form, PdfPage page) => form switch
    {
        PictureFormat.Png => PngWriter.Write(svg),
        PictureFormat.Pdf => PdfWriter.Write(svg, page),
        _ => Encoding.UTF8.GetBytes(svg),
    };
}
