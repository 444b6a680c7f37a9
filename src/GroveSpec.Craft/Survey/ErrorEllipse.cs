using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Survey;

/// <summary>Where a place lies in nineteen cases of twenty, as far as the readings tell.</summary>
/// <param name="HalfLong">Half the long axis.</param>
/// <param name="HalfShort">Half the short axis.</param>
/// <param name="Toward">The bearing of the long axis, from 0 up to but not including 180 degrees.</param>
public readonly record struct ErrorEllipse(Length HalfLong, Length HalfShort, Bearing Toward)
{
    /// <summary>The ellipse of a covariance: axes by its eigenvectors.</summary>
    /// <param name="xx">The variance to the right, in mm².</param>
    /// <param name="xy">The covariance.</param>
    /// <param name="yy">The variance to the back.</param>
    /// <param name="factor">By how much a standard deviation is stretched.</param>
    /// <returns>The ellipse; one beyond the language's largest length is cut there.</returns>
    internal static ErrorEllipse Of(double xx, double xy, double yy, double factor)
    {
        var middle = (xx + yy) / 2;
        var spread = Math.Sqrt(((xx - yy) * (xx - yy) / 4) + (xy * xy));

        // The long axis turns from x by half of the angle whose tangent is 2xy/(xx − yy).
        var turn = 0.5 * Math.Atan2(2 * xy, xx - yy);
        var bearing = Bearing.Of(Math.Cos(turn), Math.Sin(turn)).Degrees;
        return new(Cut(Math.Sqrt(middle + spread)), Cut(Math.Sqrt(Math.Max(0, middle - spread))), new((bearing >= 180 ? bearing - 180 : bearing) % 180));

        Length Cut(double deviation) => Length.FromMillimetres(Math.Min(factor * deviation, Length.Largest.Millimetres));
    }

    /// <summary>Whether a place lies within the ellipse about a centre.</summary>
    /// <param name="centre">The centre.</param>
    /// <param name="place">The place.</param>
    /// <returns>True inside and on the edge.</returns>
    public bool Holds(PlanPoint centre, PlanPoint place)
    {
        double dx = (place.X - centre.X).Millimetres, dy = (place.Y - centre.Y).Millimetres;
        var along = (dx * Toward.Rightward) + (dy * Toward.Backward);
        var across = (dx * Toward.Backward) - (dy * Toward.Rightward);
        double one = Share(along, HalfLong), other = Share(across, HalfShort);
        return (one * one) + (other * other) <= 1;

        static double Share(double off, Length half) => off == 0 ? 0 : off / half.Millimetres;
    }
}
