namespace GroveSpec.Drawing.Scene;

/// <summary>Which part of a line of text stands at its anchor.</summary>
internal enum TextAnchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
