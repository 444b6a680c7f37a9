using GroveSpec.Publishing.Faces;
using SkiaSharp;
using Svg.Skia.TypefaceProviders;

namespace GroveSpec.Publishing.Raster;

/// <summary>
/// Gives the built-in faces to whatever family a drawing asks for, the Hebrew and the Arabic one where it asks for those, so that a picture looks the same on every machine
/// and needs no installed font.
/// </summary>
internal sealed class BuiltInTypefaces : ITypefaceProvider, IDisposable
{
    private readonly SKTypeface?[] faces = new SKTypeface?[Enum.GetValues<FaceStyle>().Length];

    /// <inheritdoc/>
    public SKTypeface? FromFamilyName(string fontFamily, SKFontStyleWeight fontWeight, SKFontStyleWidth fontWidth, SKFontStyleSlant fontStyle)
    {
        var style = fontFamily == FaceLibrary.HebrewFamilyName ? FaceStyle.Hebrew
            : fontFamily == FaceLibrary.ArabicFamilyName ? FaceStyle.Arabic
            : fontStyle != SKFontStyleSlant.Upright ? FaceStyle.Italic
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
