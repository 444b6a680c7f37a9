namespace GroveSpec.Drawing.Surveying;

/// <summary>What a line between two trunks of a survey is.</summary>
internal enum ReadingLineKind
{
    /// <summary>A reading that fits.</summary>
    Fits,

    /// <summary>A reading that does not fit, or may not.</summary>
    Off,

    /// <summary>A reading to take next.</summary>
    Next,
}
