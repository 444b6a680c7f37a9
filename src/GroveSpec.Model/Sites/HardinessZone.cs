namespace GroveSpec.Model.Sites;

/// <summary>A hardiness zone by the mean of the year's coldest night.</summary>
/// <param name="Number">From 1 to 13.</param>
/// <param name="Half">'a' for the colder half, 'b' for the warmer, none for the whole zone.</param>
public readonly record struct HardinessZone(int Number, char? Half)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Number}{Half}";
}
