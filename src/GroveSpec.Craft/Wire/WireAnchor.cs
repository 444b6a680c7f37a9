namespace GroveSpec.Craft.Wire;

/// <summary>What the lower end of a wire holds on to. Source: common practice.</summary>
public enum WireAnchor
{
    /// <summary>It is pushed into the soil behind the trunk.</summary>
    Soil,

    /// <summary>It takes one and a half turns of its own below the part that is wired.</summary>
    Turns,
}
