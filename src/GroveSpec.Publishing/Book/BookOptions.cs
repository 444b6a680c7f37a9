using GroveSpec.Model.Quantities;

namespace GroveSpec.Publishing.Book;

/// <summary>How a book is made.</summary>
public sealed record BookOptions
{
    /// <summary>Metric units, the faces carried in the page.</summary>
    public static readonly BookOptions Default = new();

    /// <summary>The units that tables and drawings speak in.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary>Whether the faces are carried in the page; without them it is about 100 KB smaller, and a reader's own serif face is taken.</summary>
    public bool CarriesFaces { get; init; } = true;
}
