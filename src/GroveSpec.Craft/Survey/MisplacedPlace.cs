using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Survey;

/// <summary>A trunk whose place in the file does not fit what was read to it, although the readings agree with each other.</summary>
/// <param name="Trunk">The trunk's name.</param>
/// <param name="Stated">The place that the file gives it.</param>
/// <param name="ByReadings">Where the readings put it.</param>
/// <param name="IsSure">Whether nothing else explains the readings; if not, other places or readings may be wrong instead.</param>
public sealed record MisplacedPlace(string Trunk, PlanPoint Stated, PlanPoint ByReadings, bool IsSure);
