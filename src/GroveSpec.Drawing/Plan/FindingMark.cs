namespace GroveSpec.Drawing.Plan;

/// <summary>One stroke of a finding on the plan, with the places where its ringed number could stand.</summary>
internal sealed class FindingMark
{
    /// <summary>The finding's number, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The stroke, a polyline on the page; for a ring, closed.</summary>
    public required (double X, double Y)[] Stroke { get; set; }

    /// <summary>Whether the stroke is a straight rod, which is broken where it runs through trunks and drawn out to its number.</summary>
    public bool IsRod { get; init; }

    /// <summary>Whether the stroke is a ring round a trunk.</summary>
    public bool IsRing { get; init; }

    /// <summary>Where the number could stand, best first.</summary>
    public required List<(double X, double Y)> NumberPlaces { get; init; }
}
