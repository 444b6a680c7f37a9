using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Craft.Calendar;

/// <summary>Things said about when tasks are due that cannot hold together. Without any one of them the others can.</summary>
/// <param name="Statements">The tasks of whose times each is one, and where it was written, in the order of the file.</param>
/// <param name="DaysShort">By how many days they miss each other, at least one.</param>
public sealed record TaskConflict(ImmutableArray<(PlantingTask Task, Origin Origin)> Statements, int DaysShort);
