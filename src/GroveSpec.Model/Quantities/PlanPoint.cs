namespace GroveSpec.Model.Quantities;

/// <summary>A place in the plan, seen from above.</summary>
/// <param name="X">To the right of the origin, as the usual viewer sees it.</param>
/// <param name="Y">To the back of the origin.</param>
public readonly record struct PlanPoint(Length X, Length Y)
{
    /// <summary>The origin: the container's centre, or the mark the grower picked.</summary>
    public static readonly PlanPoint Origin;

    /// <summary>Makes a place from millimetres, rounded to the nearest nanometre.</summary>
    /// <param name="x">Millimetres to the right.</param>
    /// <param name="y">Millimetres to the back.</param>
    /// <returns>The place.</returns>
    public static PlanPoint FromMillimetres(double x, double y) => new(Length.FromMillimetres(x), Length.FromMillimetres(y));

    /// <summary>The straight distance to another place, rounded to the nearest nanometre.</summary>
    /// <param name="other">The other place.</param>
    /// <returns>The distance, never negative.</returns>
    public Length DistanceTo(PlanPoint other)
    {
        var x = (X - other.X).Millimetres;
        var y = (Y - other.Y).Millimetres;
        return Length.FromMillimetres(Math.Sqrt((x * x) + (y * y)));
    }

    /// <summary>The bearing of another place from here; the back when both are the same.</summary>
    /// <param name="other">The other place.</param>
    /// <returns>The bearing.</returns>
    public Bearing BearingTo(PlanPoint other) => Bearing.Of((other.X - X).Millimetres, (other.Y - Y).Millimetres);

    /// <inheritdoc/>
    public override string ToString() => $"({X.Millimetres:0.######}, {Y.Millimetres:0.######}) mm";
}
