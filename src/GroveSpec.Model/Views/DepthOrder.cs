namespace GroveSpec.Model.Views;

/// <summary>Whether the large trunks stand near the viewer or far.</summary>
public enum DepthOrder
{
    /// <summary>Large near and small far: it deepens a small scene.</summary>
    Near,

    /// <summary>Small near and large far: a wood seen from its edge.</summary>
    Far,
}
