namespace GroveSpec.Checks.Tests;

/// <summary>A trunk of a <see cref="GeneratedPlanting"/>, in whole millimetres.</summary>
internal readonly record struct GeneratedTrunk(string Name, int X, int Y, int Diameter, int Height, string? Role)
{
    /// <summary>Its statement.</summary>
    public override string ToString() => $"trunk {Name} at {X}, {Y} mm diameter {Diameter} mm height {Height} mm" + (Role is null ? "" : $" role {Role}");
}
