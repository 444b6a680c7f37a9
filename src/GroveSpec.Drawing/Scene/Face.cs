namespace GroveSpec.Drawing.Scene;

/// <summary>A face of the one family that the plates are set in.</summary>
internal enum Face
{
    /// <summary>Upright.</summary>
    Regular,

    /// <summary>Slanted: names of trunks and remarks.</summary>
    Italic,
}
