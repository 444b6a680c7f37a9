namespace GroveSpec.Drawing.Front;

/// <summary>A point of the page, in px; y runs down.</summary>
/// <param name="X">From the left edge.</param>
/// <param name="Y">From the upper edge.</param>
internal readonly record struct Spot(double X, double Y)
{
    public static Spot operator +(Spot left, Spot right) => new(left.X + right.X, left.Y + right.Y);

    public static Spot operator -(Spot left, Spot right) => new(left.X - right.X, left.Y - right.Y);

    public static Spot operator *(Spot spot, double factor) => new(spot.X * factor, spot.Y * factor);

    /// <summary>Its distance from the origin.</summary>
    public double Size => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The point a part of the way to another.</summary>
    public Spot Toward(Spot other, double part) => this + ((other - this) * part);
}
