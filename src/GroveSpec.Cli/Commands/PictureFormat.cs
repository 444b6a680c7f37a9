namespace GroveSpec.Cli.Commands;

/// <summary>What a picture is written as.</summary>
internal enum PictureFormat
{
    /// <summary>Scalable Vector Graphics.</summary>
    Svg,

    /// <summary>Portable Network Graphics, two pixels for one of the drawing's.</summary>
    Png,

    /// <summary>Portable Document Format, one page as large as the drawing.</summary>
    Pdf,
}
