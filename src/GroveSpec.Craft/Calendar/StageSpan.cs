using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>A stage of the tree's year as days.</summary>
/// <param name="Stage">Which stage.</param>
/// <param name="Days">From its likeliest first day to the day before the next stage.</param>
public readonly record struct StageSpan(Stage Stage, DateInterval Days);
