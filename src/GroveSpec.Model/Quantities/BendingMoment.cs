namespace GroveSpec.Model.Quantities;

/// <summary>What bends a beam: a force times its arm.</summary>
/// <param name="NewtonMillimetres">The moment in N·mm.</param>
public readonly record struct BendingMoment(double NewtonMillimetres)
{
    /// <summary>How many times one moment goes into another, a bare ratio.</summary>
    public static double operator /(BendingMoment left, BendingMoment right) => left.NewtonMillimetres / right.NewtonMillimetres;

    /// <inheritdoc/>
    public override string ToString() => $"{NewtonMillimetres:0.######} N·mm";
}
