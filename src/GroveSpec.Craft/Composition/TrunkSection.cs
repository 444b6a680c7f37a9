using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>A trunk cut through at the soil, taken as round.</summary>
/// <param name="Centre">Its centre in the plan.</param>
/// <param name="Diameter">Its diameter, not below zero.</param>
public readonly record struct TrunkSection(PlanPoint Centre, Length Diameter);
