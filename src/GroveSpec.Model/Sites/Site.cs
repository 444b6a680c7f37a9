using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using NodaTime;

namespace GroveSpec.Model.Sites;

/// <summary>Where the planting is kept. Each part may be missing.</summary>
public sealed record Site
{
    /// <summary>Where the statement was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>Degrees north of the equator, negative south of it, within ±90.</summary>
    public Stated<Angle>? Latitude { get; init; }

    /// <summary>The hardiness zone as written, such as 8b.</summary>
    public Stated<HardinessZone>? Zone { get; init; }

    /// <summary>The usual day of the last frost before the growing season.</summary>
    public Stated<AnnualDate>? LastFrost { get; init; }

    /// <summary>The usual day of the first frost after it.</summary>
    public Stated<AnnualDate>? FirstFrost { get; init; }

    /// <summary>Twelve mean temperatures, January first.</summary>
    public Stated<ImmutableArray<Temperature>>? MonthlyMeans { get; init; }

    /// <summary>Where the sun stands at noon, as a bearing in the plan.</summary>
    public Stated<Bearing>? SunFrom { get; init; }

    /// <summary>Whether the seasons are those of the southern hemisphere; without a latitude, the northern are taken.</summary>
    public bool IsSouthern => Latitude is { Value.Degrees: < 0 };
}
