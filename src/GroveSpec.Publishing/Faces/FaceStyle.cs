namespace GroveSpec.Publishing.Faces;

/// <summary>The faces that are built in.</summary>
internal enum FaceStyle
{
    /// <summary>Upright, for text.</summary>
    Regular,

    /// <summary>Slanted, for names and notes.</summary>
    Italic,

    /// <summary>Upright and somewhat heavier, for titles.</summary>
    Medium,

    /// <summary>Upright, for Hebrew letters, of another family.</summary>
    Hebrew,

    /// <summary>Upright, for Arabic letters and numerals, of another family.</summary>
    Arabic,
}
