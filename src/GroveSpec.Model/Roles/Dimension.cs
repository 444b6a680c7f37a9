namespace GroveSpec.Model.Roles;

/// <summary>Which size of a trunk is meant.</summary>
public enum Dimension
{
    /// <summary>The diameter above the flare.</summary>
    Diameter,

    /// <summary>The height from the soil.</summary>
    Height,
}
