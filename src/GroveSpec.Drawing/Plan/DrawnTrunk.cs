using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Plan;

/// <summary>A trunk with its place and sizes on the page, in pixels.</summary>
internal sealed class DrawnTrunk
{
    /// <summary>The trunk.</summary>
    public required TrunkState State { get; init; }

    /// <summary>The centre of its base.</summary>
    public required double X { get; init; }

    /// <summary>The centre of its base, downward.</summary>
    public required double Y { get; init; }

    /// <summary>The radius of its section above the flare, to scale.</summary>
    public required double TrueRadius { get; init; }

    /// <summary>The radius it is drawn with: to scale, but never so small that it could not be seen.</summary>
    public double Radius => Math.Max(TrueRadius, 1.4);

    /// <summary>The radius of its flare, as drawn.</summary>
    public double FlareRadius => (Radius * 1.26) + 1.5;

    /// <summary>The radius of its crown.</summary>
    public required double CrownRadius { get; init; }

    /// <summary>Whether nobody stated its crown.</summary>
    public required bool IsCrownAssumed { get; init; }

    /// <summary>Its run from base to tip as seen from above, the base first; one place for an upright trunk.</summary>
    public required (double X, double Y)[] Run { get; init; }

    /// <summary>The tip.</summary>
    public (double X, double Y) Tip => Run[^1];

    /// <summary>The middle of its crown: two thirds of the way from base to tip.</summary>
    public (double X, double Y) CrownCentre => (X + ((Tip.X - X) * 2 / 3), Y + ((Tip.Y - Y) * 2 / 3));

    /// <summary>Whether its tip stands far enough from its base to be drawn.</summary>
    public bool Leans => ((Tip.X - X) * (Tip.X - X)) + ((Tip.Y - Y) * (Tip.Y - Y)) > (Radius + 4) * (Radius + 4);

    /// <summary>Its name.</summary>
    public string Name => State.Name;

    /// <summary>The id of its origin.</summary>
    public string Origin => State.Trunk.Origin.Id;
}
