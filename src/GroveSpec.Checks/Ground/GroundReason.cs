namespace GroveSpec.Checks.Ground;

/// <summary>A finding that a newcomer would raise at a place.</summary>
/// <param name="Check">The check that finds it.</param>
/// <param name="Trunks">Its trunks, as a set of places in the order of their names.</param>
internal readonly record struct GroundReason(CheckDescription Check, ulong Trunks)
{
    /// <summary>Whether both are the same finding; a check is described once, so that its words need not be compared.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True when they are.</returns>
    public bool Equals(GroundReason other) => Trunks == other.Trunks && ReferenceEquals(Check, other.Check);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Trunks, System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(Check));
}
