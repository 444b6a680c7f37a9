using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Tasks;

/// <summary>How a task is done. Closed.</summary>
public abstract record TaskDetail
{
    private TaskDetail()
    {
    }

    /// <summary>Where it was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>With which wire.</summary>
    /// <param name="Metal">The metal.</param>
    /// <param name="Diameter">The wire's diameter, above zero.</param>
    /// <param name="Strands">How many wires lie side by side, at least one.</param>
    public sealed record WithWire(WireMetal Metal, Length Diameter, int Strands) : TaskDetail;

    /// <summary>At which angle from the trunk's axis the wire runs.</summary>
    /// <param name="Angle">The angle.</param>
    public sealed record Coil(Angle Angle) : TaskDetail;

    /// <summary>Over which part of the trunk.</summary>
    /// <param name="From">Where it begins, above the soil along the trunk.</param>
    /// <param name="To">Where it ends.</param>
    public sealed record Span(Length From, Length To) : TaskDetail;

    /// <summary>Which way and how far the trunk is bent.</summary>
    /// <param name="Angle">The change of direction.</param>
    /// <param name="Toward">The bearing toward which it is bent.</param>
    /// <param name="Over">The length of trunk over which the bend is spread; null when left out.</param>
    public sealed record Bend(Angle Angle, Bearing Toward, Length? Over) : TaskDetail;

    /// <summary>How high on the trunk.</summary>
    /// <param name="Position">Low, middle or high.</param>
    public sealed record At(TrunkPosition Position) : TaskDetail;

    /// <summary>On which side of the trunk.</summary>
    /// <param name="Side">The bearing that side faces; back is 0.</param>
    public sealed record Facing(Bearing Side) : TaskDetail;
}
