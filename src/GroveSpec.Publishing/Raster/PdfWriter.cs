using SkiaSharp;

namespace GroveSpec.Publishing.Raster;

/// <summary>
/// Turns a drawing into a PDF page of lines and text, with the built-in faces. Skia is loaded only when this is called.
/// </summary>
public static class PdfWriter
{
    private const float PointsPerPixel = 72f / 96f;
    private const float PointsPerMillimetre = 72f / 25.4f;
    private const float MarginMillimetres = 12f;

    /// <summary>Prints the drawing.</summary>
    /// <param name="svg">The drawing's text.</param>
    /// <param name="page">The page's size. On a paper size the drawing keeps a margin of 12 mm, is centred, and is made larger or smaller to fit.</param>
    /// <returns>The PDF file's bytes, the same for the same drawing and page.</returns>
    /// <exception cref="ArgumentException">The text is no drawing, or one without a size.</exception>
    public static byte[] Write(string svg, PdfPage page = PdfPage.Drawing)
    {
        using var plate = new Plate(svg);
        var (width, height) = SizeInPoints(plate, page);
        var margin = page == PdfPage.Drawing ? 0 : MarginMillimetres * PointsPerMillimetre;
        var factor = Math.Min((width - (2 * margin)) / plate.Width, (height - (2 * margin)) / plate.Height);

        using var bytes = new MemoryStream();
        using (var stream = new SKManagedWStream(bytes))
        using (var document = SKDocument.CreatePdf(stream))
        {
            using var canvas = document.BeginPage(width, height);
            canvas.Translate((width - (plate.Width * factor)) / 2, (height - (plate.Height * factor)) / 2);
            canvas.Scale(factor);
            plate.DrawOn(canvas);
            document.EndPage();
            document.Close();
        }

        return bytes.ToArray();
    }

    private static (float Width, float Height) SizeInPoints(Plate plate, PdfPage page)
    {
        var (narrow, wide) = page switch
        {
            PdfPage.A4 => (210 * PointsPerMillimetre, 297 * PointsPerMillimetre),
            PdfPage.Letter => (8.5f * 72, 11f * 72),
            _ => (0f, 0f),
        };
        return page == PdfPage.Drawing ? (plate.Width * PointsPerPixel, plate.Height * PointsPerPixel)
            : plate.Width > plate.Height ? (wide, narrow)
            : (narrow, wide);
    }
}
