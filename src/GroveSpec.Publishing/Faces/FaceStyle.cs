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
}
