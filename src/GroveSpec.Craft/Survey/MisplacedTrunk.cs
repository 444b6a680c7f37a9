namespace GroveSpec.Craft.Survey;

/// <summary>A known trunk whose place is not what the readings make it.</summary>
/// <param name="Explanation">What comes of it when its place is sought.</param>
/// <param name="Freed">The network in which its place is sought.</param>
/// <param name="OffBetween">How many readings between it and other known places disagree with the place that the file names.</param>
internal sealed record MisplacedTrunk(Explanation Explanation, SolvedNetwork Freed, int OffBetween);
