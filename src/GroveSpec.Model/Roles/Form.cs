namespace GroveSpec.Model.Roles;

/// <summary>The figure of a trunk against the others of its planting.</summary>
public enum Form
{
    /// <summary>As wide as it is tall for this planting.</summary>
    Balanced,

    /// <summary>Wide but short.</summary>
    Stout,

    /// <summary>Tall but thin.</summary>
    Slender,
}
