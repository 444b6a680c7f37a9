namespace GroveSpec.Publishing.Raster;

/// <summary>The page a drawing is printed on.</summary>
public enum PdfPage
{
    /// <summary>Exactly as large as the drawing, 96 of its pixels to an inch.</summary>
    Drawing,

    /// <summary>ISO A4, 210 by 297 mm, turned to suit the drawing.</summary>
    A4,

    /// <summary>US Letter, 8.5 by 11 in, turned to suit the drawing.</summary>
    Letter,
}
