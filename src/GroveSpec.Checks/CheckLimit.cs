using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks;

/// <summary>A check's limit.</summary>
/// <param name="Amount">The limit, in its unit.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Smallest">The smallest limit that means anything, in the same unit.</param>
/// <param name="Largest">The largest, in the same unit.</param>
public sealed record CheckLimit(double Amount, ToleranceUnit Unit, double Smallest, double Largest);
