using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Readings;

/// <summary>A distance between two trunks as measured.</summary>
/// <param name="From">One trunk's name, known or not.</param>
/// <param name="To">The other trunk's name, known or not.</param>
/// <param name="Distance">The distance read, above zero.</param>
/// <param name="IsBetweenBark">True for the gap between bark and bark, false from centre to centre.</param>
/// <param name="Origin">Where it was written.</param>
public sealed record TapeReading(string From, string To, Length Distance, bool IsBetweenBark, Origin Origin);
