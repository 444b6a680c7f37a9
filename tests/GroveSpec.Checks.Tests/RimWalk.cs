using System.Globalization;
using GroveSpec.Craft.Containers;
using Xunit;

namespace GroveSpec.Checks.Tests;

/// <summary>A walk of a trunk 20 mm thick towards the rim of a slab, in steps of a few nanometres, and the room there, measured apart from the program.</summary>
internal sealed class RimWalk
{
    /// <summary>A slab whose rim bulges all round.</summary>
    public const string Round = "slab (-230,-90) (-120,-150) (90,-140) (240,-40) (180,120) (-40,150) (-210,80) mm, 22 mm deep";

    /// <summary>A slab that is hollow at the back.</summary>
    public const string Hollow = "slab (-260,-160) (240,-180) (280,150) (20,60) (-240,170) mm, 30 mm deep";

    private const long Farthest = 400_000_000;
    private const decimal Radius = 10;

    private readonly string head;
    private readonly (long X, long Y)[] rim;
    private readonly Func<long, (long X, long Y)> place;

    public RimWalk(string slab, int fromX, int fromY, int stepX, int stepY)
    {
        head = Head(slab);
        place = step => ((fromX * 1_000_000L) + (step * stepX), (fromY * 1_000_000L) + (step * stepY));
        rim = [.. ContainerOutline.Of(Check.Of(head).Planting.Container!).Points.Select(point => (point.X.Nanometres, point.Y.Nanometres))];
    }

    /// <summary>A slab, where the walk begins in millimetres, and its step in nanometres.</summary>
    public static TheoryData<string, int, int, int, int> All { get; } = new()
    {
        { Round, 0, 0, 1, 0 },
        { Round, -20, 10, -3, 2 },
        { Round, 30, 0, 2, -5 },
        { Hollow, 20, -60, 0, 1 },
        { Hollow, 60, -40, -1, 2 },
        { Hollow, -100, 0, 0, 1 },
        { Hollow, 0, 0, 1, -1 },
    };

    /// <summary>The usual head with another container.</summary>
    /// <param name="container">The container.</param>
    public static string Head(string container) => Check.Head.Replace("rectangle 600 x 400 x 40 mm", container, StringComparison.Ordinal);

    /// <summary>The first step from which on a check is told, by halves.</summary>
    /// <param name="check">near-rim or off-container; once the bark is past the rim it counts as told.</param>
    public long FirstStep(string check)
    {
        long before = 0, at = Farthest;
        while (at - before > 1)
        {
            var middle = before + ((at - before) / 2);
            var found = Check.Of(SourceAt(middle)).Findings;
            (before, at) = found.Any(finding => finding.Check.Name == check || finding.Check.Name == "off-container") ? (before, middle) : (middle, at);
        }

        return at;
    }

    /// <summary>The planting after so many steps.</summary>
    /// <param name="step">How many.</param>
    public string SourceAt(long step)
    {
        var (x, y) = place(step);
        return string.Create(CultureInfo.InvariantCulture, $"{head}trunk A at {x / 1e6m}, {y / 1e6m} mm diameter 20 mm");
    }

    /// <summary>The room between bark and rim in millimetres, by decimal arithmetic over every side of the rim; negative where the bark is past it, as long as the centre is not.</summary>
    /// <param name="step">After how many steps.</param>
    public decimal RoomAt(long step)
    {
        var (px, py) = place(step);
        var nearest = decimal.MaxValue;
        for (var index = 0; index < rim.Length; index++)
        {
            var (ax, ay) = ((rim[index].X - px) / 1e6m, (rim[index].Y - py) / 1e6m);
            var (bx, by) = ((rim[(index + 1) % rim.Length].X - px) / 1e6m, (rim[(index + 1) % rim.Length].Y - py) / 1e6m);
            decimal ux = bx - ax, uy = by - ay;
            var along = Math.Clamp(-((ax * ux) + (ay * uy)) / ((ux * ux) + (uy * uy)), 0, 1);
            decimal x = ax + (along * ux), y = ay + (along * uy);
            nearest = Math.Min(nearest, (x * x) + (y * y));
        }

        // Heron's step doubles the digits of a root.
        var root = (decimal)Math.Sqrt((double)nearest);
        root = (root + (nearest / root)) / 2;
        return root - Radius;
    }
}
