namespace GroveSpec.Craft.Fronts;

/// <summary>A range of bearings, clockwise, within one turn.</summary>
/// <param name="From">Its beginning in degrees, from 0 to 360.</param>
/// <param name="To">Its end in degrees, not less, at most 360.</param>
public readonly record struct BearingRange(double From, double To)
{
    /// <summary>From its beginning to its end, in degrees.</summary>
    public double Width => To - From;
}
