using SkiaSharp;

namespace GroveSpec.Publishing.Raster;

/// <summary>Turns a drawing into a PNG picture, with the built-in faces. Skia is loaded only when this is called.</summary>
public static class PngWriter
{
    /// <summary>The smallest scale that is taken.</summary>
    public const double SmallestScale = 0.05;

    /// <summary>The largest scale that is taken.</summary>
    public const double LargestScale = 20;

    /// <summary>The most pixels along one side; a larger picture is drawn at the scale that just fits.</summary>
    public const int LargestSide = 16_384;

    /// <summary>Draws the picture.</summary>
    /// <param name="svg">The drawing's text.</param>
    /// <param name="scale">Pixels of the picture for one of the drawing's own, from <see cref="SmallestScale"/> to <see cref="LargestScale"/>; 2 suits a screen of today and 4 a print.</param>
    /// <returns>The PNG file's bytes, the same for the same drawing and scale.</returns>
    /// <exception cref="ArgumentException">The text is no drawing, or one without a size.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The scale is out of range or not a number.</exception>
    public static byte[] Write(string svg, double scale = 2)
    {
        if (!(scale is >= SmallestScale and <= LargestScale))
        {
            throw new ArgumentOutOfRangeException(nameof(scale), scale, $"A picture's scale lies from {SmallestScale} to {LargestScale}.");
        }

        using var plate = new Plate(svg);
        var factor = (float)Math.Min(scale, LargestSide / (double)Math.Max(plate.Width, plate.Height));
        var width = Math.Max(1, (int)Math.Ceiling(plate.Width * factor));
        var height = Math.Max(1, (int)Math.Ceiling(plate.Height * factor));
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.White);
            canvas.Scale(factor);
            plate.DrawOn(canvas);
        }

        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
