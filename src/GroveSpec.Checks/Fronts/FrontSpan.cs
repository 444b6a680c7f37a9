using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Fronts;

/// <summary>A range of bearings, clockwise seen from above, in which a front holds: what is found there weighs no more.</summary>
/// <param name="From">Its beginning.</param>
/// <param name="To">Its end, clockwise of it; the beginning itself for all round.</param>
/// <param name="Width">From one to the other, from nothing to a full turn.</param>
public readonly record struct FrontSpan(Bearing From, Bearing To, Angle Width)
{
    /// <summary>Whether it is a full turn.</summary>
    public bool IsAllRound => Width.Degrees >= 360;

    /// <summary>Whether a bearing lies in it.</summary>
    /// <param name="bearing">The bearing.</param>
    /// <returns>True when it does, at its ends too.</returns>
    public bool Holds(Bearing bearing) => IsAllRound || new Bearing(bearing.Degrees - From.Degrees).Degrees <= Width.Degrees;
}
