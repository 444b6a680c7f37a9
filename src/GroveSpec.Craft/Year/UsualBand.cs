using GroveSpec.Model.Species;
using GroveSpec.Model.Times;

namespace GroveSpec.Craft.Year;

/// <summary>When a stage usually begins, in days from a day of the site's year.</summary>
/// <param name="Stage">Which stage.</param>
/// <param name="Anchor">The day counted from.</param>
/// <param name="Earliest">The first day on which it may begin, negative before the anchor.</param>
/// <param name="Latest">The day by which it has begun.</param>
/// <param name="Basis">Whether the species' profile or its leaf habit has it.</param>
/// <param name="Source">Where the band comes from.</param>
internal readonly record struct UsualBand(Stage Stage, FrostAnchor Anchor, int Earliest, int Latest, StageBasis Basis, string Source);
