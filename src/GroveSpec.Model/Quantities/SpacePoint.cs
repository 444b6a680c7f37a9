namespace GroveSpec.Model.Quantities;

/// <summary>A place in space.</summary>
/// <param name="X">To the right of the origin.</param>
/// <param name="Y">To the back of the origin.</param>
/// <param name="Z">Above the soil.</param>
public readonly record struct SpacePoint(Length X, Length Y, Length Z)
{
    /// <summary>The place in the plan that lies straight below or above.</summary>
    public PlanPoint Plan => new(X, Y);
}
