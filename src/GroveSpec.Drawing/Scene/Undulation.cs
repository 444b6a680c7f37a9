namespace GroveSpec.Drawing.Scene;

/// <summary>A smooth unevenness round a full turn: waves of two, three and five to the turn.</summary>
/// <param name="Second">The phase of the wave of two, in radians.</param>
/// <param name="Third">The phase of the wave of three.</param>
/// <param name="Fifth">The phase of the wave of five.</param>
internal readonly record struct Undulation(double Second, double Third, double Fifth)
{
    /// <summary>The unevenness in a direction.</summary>
    /// <param name="radians">The direction.</param>
    /// <returns>Between -1 and 1.</returns>
    public double At(double radians) =>
        (0.5 * Math.Sin((2 * radians) + Second)) + (0.3 * Math.Sin((3 * radians) + Third)) + (0.2 * Math.Sin((5 * radians) + Fifth));
}
