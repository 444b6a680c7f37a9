namespace GroveSpec.Model.Roles;

/// <summary>How strongly a trunk may grow.</summary>
public enum Vigour
{
    /// <summary>Leave its leaves and let it run.</summary>
    Push,

    /// <summary>Keep it going as it is.</summary>
    Steady,

    /// <summary>Hold it back.</summary>
    Restrain,
}
