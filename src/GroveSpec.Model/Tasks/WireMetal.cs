namespace GroveSpec.Model.Tasks;

/// <summary>What a wire is made of.</summary>
public enum WireMetal
{
    /// <summary>Aluminium, often anodised.</summary>
    Aluminium,

    /// <summary>Annealed copper.</summary>
    Copper,
}
