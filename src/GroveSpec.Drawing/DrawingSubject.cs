using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>What is drawn.</summary>
/// <param name="State">The planting on a day, with the places that tape readings give filled in.</param>
/// <param name="Findings">
/// What was noticed, ranked. A finding's number in every drawing, table and key is its place in this list, counted from 1,
/// so that plates and page agree.
/// </param>
public sealed record DrawingSubject(PlantingState State, ImmutableArray<Finding> Findings);
