namespace GroveSpec.Cli.Commands;

/// <summary>How a planting can be looked at.</summary>
internal enum PictureView
{
    /// <summary>From above.</summary>
    Plan,

    /// <summary>From the viewer's place.</summary>
    Front,

    /// <summary>Its work through the seasons.</summary>
    Timeline,

    /// <summary>Its wire, for the bench.</summary>
    Wiring,
}
