using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Plan;

/// <summary>A gap between two neighbours, as it is drawn.</summary>
internal sealed class GapLine
{
    /// <summary>The trunk that is written first.</summary>
    public required DrawnTrunk From { get; init; }

    /// <summary>The other trunk.</summary>
    public required DrawnTrunk To { get; init; }

    /// <summary>From centre to centre.</summary>
    public required Length Distance { get; init; }

    /// <summary>How far it is drawn beside its true line, in pixels, to its own left on the page; 0 unless a finding's line runs there.</summary>
    public double Beside { get; set; }

    /// <summary>From centre to centre on the page.</summary>
    public double PixelLength => Math.Sqrt(Math.Pow(To.X - From.X, 2) + Math.Pow(To.Y - From.Y, 2));

    /// <summary>A place along it.</summary>
    /// <param name="share">0 at the first trunk's centre, 1 at the other's.</param>
    /// <param name="beside">How far beside the drawn line.</param>
    /// <returns>The place on the page.</returns>
    public (double X, double Y) At(double share, double beside = 0)
    {
        var (x, y) = (To.X - From.X, To.Y - From.Y);
        var length = Math.Max(1e-9, PixelLength);
        var off = Beside + beside;
        return (From.X + (x * share) + (y / length * off), From.Y + (y * share) - (x / length * off));
    }

    /// <summary>The shares between which it is free of both trunks.</summary>
    public (double First, double Last) Free
    {
        get
        {
            var length = Math.Max(1e-9, PixelLength);
            return ((From.FlareRadius + 2) / length, 1 - ((To.FlareRadius + 2) / length));
        }
    }
}
