using GroveSpec.Craft.Care;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Tasks;
using NodaTime;

namespace GroveSpec.Craft.Wire;

/// <summary>One wire on one trunk: what is said of it, what common practice would take, and what follows.</summary>
public sealed record WirePlan
{
    /// <summary>The angle halfway between 45° and 55°, taken where the file names none. Source: common practice.</summary>
    public static readonly Angle UsualCoil = new(50);

    /// <summary>The task, and when it is on.</summary>
    public required WireTerm Term { get; init; }

    /// <summary>The trunk.</summary>
    public required TrunkState Trunk { get; init; }

    /// <summary>Its species.</summary>
    public required TreeKind Kind { get; init; }

    /// <summary>The wire as stated; null when the file names none.</summary>
    public TaskDetail.WithWire? Stated { get; init; }

    /// <summary>The angle as stated; null when the file names none.</summary>
    public TaskDetail.Coil? StatedCoil { get; init; }

    /// <summary>The wired part as stated; null when the file names none.</summary>
    public TaskDetail.Span? Span { get; init; }

    /// <summary>From the soil to the tip along the trunk; null when neither its height nor its line is known.</summary>
    public Length? Run { get; init; }

    /// <summary>How high the wire works, along the trunk from the soil: the middle of the wired part, else of the third that is named, else the soil.</summary>
    public required Length Place { get; init; }

    /// <summary>How thick the trunk is there, without the flare at the soil: as it thins towards its tip, or as measured above the flare where its run is not known. Null when it was never measured.</summary>
    public Length? Thickness { get; init; }

    /// <summary>The sizes sold that come nearest to the third, of one wire and of two side by side; null without a thickness.</summary>
    public (WireSize One, WireSize Two)? Nearest { get; init; }

    /// <summary>The better of the two; null without a thickness.</summary>
    public WireSize? Best { get; init; }

    /// <summary>What the sheet reckons with: the wire as stated, else <see cref="Best"/>.</summary>
    public WireSize? Used { get; init; }

    /// <summary>What is wound; null when the wired part, the wire or the trunk's thickness is not known, and for an angle that never gets along the trunk.</summary>
    public WireWinding? Winding { get; init; }

    /// <summary>What the bend asks for; null without one, and without a length, a thickness or a wire for it.</summary>
    public WireBend? Bend { get; init; }

    /// <summary>How the trunk thickens.</summary>
    public required Thickening Thickening { get; init; }

    /// <summary>The increment of the thickness at which the wire is expected to bite: a quarter of the wire's diameter, when it lies an eighth of it deep in the bark all round (our own choice: at the usual pace in full growth that comes within the six to eight weeks of common practice). Null without a wire.</summary>
    public Length? BitingGrowth => Used is { } wire ? wire.Diameter * 0.25 : null;

    /// <summary>The angle that holds: as stated, else <see cref="UsualCoil"/>.</summary>
    public Angle Coil => StatedCoil?.Angle ?? UsualCoil;

    /// <summary>A third of the thickness; null without one. Source: common practice.</summary>
    public Length? Third => Thickness is { } thickness ? thickness * (1 / 3.0) : null;

    /// <summary>The wire that is used, as one aluminium wire, against the trunk; null where one of both is not known.</summary>
    public Proportion? Share => Used is { } wire && Thickness is { } thickness ? new Proportion(wire.AluminiumEqual / thickness) : null;

    /// <summary>The day by which the wire is expected to bite.</summary>
    /// <param name="isSoonest">Whether the most that a year brings is taken; otherwise the usual.</param>
    /// <returns>The day; null when it is not known when the wire is put on, and where it takes years.</returns>
    public LocalDate? BiteBy(bool isSoonest) => Term.On is { } day && BitingGrowth is { } growth
        ? Thickening.DayOf(day, growth, isSoonest ? Thickening.OfYear.Most : Thickening.Usual)
        : null;
}
