using NodaTime;

namespace GroveSpec.Model.Times;

/// <summary>The season that a day lies in.</summary>
/// <param name="Season">Which season, by the hemisphere.</param>
/// <param name="Year">The year it is named for: that in which it ends.</param>
/// <param name="Days">Its first and last day.</param>
public readonly record struct SeasonOfDay(Season Season, int Year, DateInterval Days);
