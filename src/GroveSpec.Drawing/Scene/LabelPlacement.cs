namespace GroveSpec.Drawing.Scene;

/// <summary>Where a label stands.</summary>
/// <param name="Box">Its box.</param>
/// <param name="HasLeader">Whether it stands so far from what it names that a line must lead there.</param>
/// <param name="Candidate">Which of its candidates was taken; -1 for a place far off.</param>
internal readonly record struct LabelPlacement(Box Box, bool HasLeader, int Candidate);
