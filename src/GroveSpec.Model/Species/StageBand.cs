using GroveSpec.Model.Times;

namespace GroveSpec.Model.Species;

/// <summary>When a stage usually begins, as a band of days about a day of the site's year.</summary>
/// <param name="Stage">Which stage.</param>
/// <param name="Anchor">The day counted from.</param>
/// <param name="Earliest">Days after the anchor at which it may begin, negative before it.</param>
/// <param name="Latest">Days after the anchor by which it has begun.</param>
/// <param name="Source">Where the band comes from.</param>
/// <param name="Origin">Where it was written.</param>
public sealed record StageBand(Stage Stage, FrostAnchor Anchor, int Earliest, int Latest, string Source, Origin Origin);
