using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks;

/// <summary>What a rule is given.</summary>
/// <param name="Planting">The planting as written.</param>
/// <param name="State">Its state on the day that is judged, with the places that tape readings give.</param>
/// <param name="Origins">Where facts were written.</param>
/// <param name="Units">The units in which messages speak.</param>
public sealed record CheckContext(Planting Planting, PlantingState State, IOriginTable Origins, UnitSystem Units);
