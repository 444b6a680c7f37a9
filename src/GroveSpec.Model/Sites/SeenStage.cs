using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Model.Sites;

/// <summary>A stage of the tree's year as it came.</summary>
/// <param name="Stage">Which stage.</param>
/// <param name="Date">The day on which it was seen.</param>
/// <param name="Origin">Where it was written.</param>
public sealed record SeenStage(Stage Stage, LocalDate Date, Origin Origin);
