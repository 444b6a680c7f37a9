namespace GroveSpec.Model.Quantities;

/// <summary>How heavy something is.</summary>
/// <param name="Grams">The mass in grams.</param>
public readonly record struct Mass(double Grams)
{
    /// <summary>The sum of two masses.</summary>
    public static Mass operator +(Mass left, Mass right) => new(left.Grams + right.Grams);

    /// <inheritdoc/>
    public override string ToString() => $"{Grams:0.######} g";
}
