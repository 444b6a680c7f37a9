using GroveSpec.Publishing.Faces;
using SkiaSharp;
using Svg.Skia.TypefaceProviders;

namespace GroveSpec.Publishing.Raster;

/// <summary>
/// Gives the built-in faces to whatever family a drawing asks for, so that a picture looks the same on every machine
/// and needs no installed font.
/// </summary>
internal sealed class BuiltInTypefaces : ITypefaceProvider, IDisposable
{
    private readonly SKTypeface?[] faces = new SKTypeface?[3];

    /// <inheritdoc/>
    public SKTypeface? FromFamilyName(string fontFamily, SKFontStyleWeight fontWeight, SKFontStyleWidth fontWidth, SKFontStyleSlant fontStyle)
    {
        var style = fontStyle != SKFontStyleSlant.Upright ? FaceStyle.Italic
            : fontWeight > SKFontStyleWeight.Normal ? FaceStyle.Medium
            : FaceStyle.Regular;
        return faces[(int)style] ??= Load(style);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var face in faces)
        {
            face?.Dispose();
        }
    }

    private static SKTypeface Load(FaceStyle style)
    {
        using var stream = FaceLibrary.TrueType(style);
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
