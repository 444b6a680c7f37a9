namespace GroveSpec.Drawing.Scene;

/// <summary>A label that wants a place.</summary>
internal sealed class LabelRequest
{
    /// <summary>The width of the box kept for it, in pixels.</summary>
    public required double Width { get; init; }

    /// <summary>The height of the box kept for it, in pixels.</summary>
    public required double Height { get; init; }

    /// <summary>What it names: the middle of a disc.</summary>
    public required double AnchorX { get; init; }

    /// <summary>What it names, downward.</summary>
    public required double AnchorY { get; init; }

    /// <summary>The radius of the disc it names.</summary>
    public double Reach { get; init; }

    /// <summary>Its turn: the smaller the earlier.</summary>
    public int Turn { get; init; }

    /// <summary>Whether it must be placed somewhere, if need be far off with a leader.</summary>
    public bool IsRequired { get; init; }

    /// <summary>How much cost it bears before a place far off with a leader is looked for; only a required label looks for one.</summary>
    public double Bears { get; init; } = 45;

    /// <summary>Where it could stand.</summary>
    public required IReadOnlyList<LabelCandidate> Candidates { get; init; }

    /// <summary>Places round a disc: sixteen directions, close by first, the upper left before the rest, as on a botanist's plate.</summary>
    /// <param name="x">The disc's middle.</param>
    /// <param name="y">The disc's middle, downward.</param>
    /// <param name="reach">The disc's radius.</param>
    /// <param name="width">The box's width.</param>
    /// <param name="height">The box's height.</param>
    /// <returns>The places.</returns>
    public static List<LabelCandidate> Around(double x, double y, double reach, double width, double height)
    {
        var places = new List<LabelCandidate>(48);
        for (var ring = 0; ring < 3; ring++)
        {
            for (var step = 0; step < 16; step++)
            {
                // From the upper left, alternately clockwise and counter-clockwise.
                var turn = (step % 2 == 0 ? step : -(step + 1)) / 2 * (Math.Tau / 16);
                var angle = (-0.75 * Math.PI) + turn;
                places.Add(Beside(x, y, reach + 3 + (ring * 9), angle, width, height, (step * 0.25) + (ring * 5)));
            }
        }

        return places;
    }

    /// <summary>The place of a box that just clears a disc in a direction.</summary>
    /// <param name="x">The disc's middle.</param>
    /// <param name="y">The disc's middle, downward.</param>
    /// <param name="radius">The disc's radius.</param>
    /// <param name="angle">The direction, clockwise on the page from the right, in radians.</param>
    /// <param name="width">The box's width.</param>
    /// <param name="height">The box's height.</param>
    /// <param name="cost">How unwelcome it is.</param>
    /// <returns>The place.</returns>
    public static LabelCandidate Beside(double x, double y, double radius, double angle, double width, double height, double cost)
    {
        var (sin, cos) = Math.SinCos(angle);

        // A smooth way round the box: its own half-extents, drawn in towards the corners.
        return new LabelCandidate(x + ((radius + (width / 2 * Math.Min(1, Math.Abs(cos) * 1.25))) * cos), y + ((radius + (height / 2 * Math.Min(1, Math.Abs(sin) * 1.25))) * sin), cost);
    }
}
