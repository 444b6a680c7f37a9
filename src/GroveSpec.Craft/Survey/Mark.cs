using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Survey;

/// <summary>A known place and how far away the place sought is from it.</summary>
/// <param name="Place">The known place.</param>
/// <param name="Millimetres">The distance read, in millimetres, above zero.</param>
internal readonly record struct Mark(PlanPoint Place, double Millimetres);
