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

    /// <summary>How many of the places lie on the stroke itself; the rest need a leader.</summary>
    public required int PlacesOnStroke { get; init; }

    /// <summary>How unwelcome a place is: one on the stroke covers a piece of it, which costs nothing here.</summary>
    /// <param name="place">Its index in <see cref="NumberPlaces"/>.</param>
    /// <returns>A cost for the label search.</returns>
    public double CostOfPlace(int place) => (place * 1.5) + (place < PlacesOnStroke ? 0 : 26);
}
