using SkiaSharp;
using Svg.Skia;

namespace GroveSpec.Publishing.Raster;

/// <summary>A drawing read by Skia, ready to be put on a canvas.</summary>
internal sealed class Plate : IDisposable
{
    private readonly BuiltInTypefaces typefaces = new();
    private readonly SKSvg svg = new();

    /// <summary>Reads a drawing.</summary>
    /// <param name="text">The SVG's text.</param>
    /// <exception cref="ArgumentException">The text is no drawing, or one without a size.</exception>
    public Plate(string text)
    {
        svg.Settings.TypefaceProviders = [typefaces];
        try
        {
            Picture = svg.FromSvg(SeenOrder.Of(text)) ?? throw new ArgumentException("The text is no SVG drawing.", nameof(text));
        }
        catch (System.Xml.XmlException broken)
        {
            throw new ArgumentException("The text is no well-formed SVG drawing.", nameof(text), broken);
        }

        if (Picture.CullRect is not { Width: > 0, Height: > 0 })
        {
            throw new ArgumentException("The drawing has no size.", nameof(text));
        }
    }

    /// <summary>The drawing as Skia recorded it; it lives as long as this does.</summary>
    public SKPicture Picture { get; }

    /// <summary>How wide it is, in its own pixels.</summary>
    public float Width => Picture.CullRect.Width;

    /// <summary>How high it is, in its own pixels.</summary>
    public float Height => Picture.CullRect.Height;

    /// <summary>Draws it with its top left corner at the canvas's origin.</summary>
    /// <param name="canvas">Where to.</param>
    public void DrawOn(SKCanvas canvas)
    {
        canvas.Translate(-Picture.CullRect.Left, -Picture.CullRect.Top);
        canvas.DrawPicture(Picture);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        svg.Dispose();
        typefaces.Dispose();
    }
}
