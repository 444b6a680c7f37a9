namespace GroveSpec.Drawing.Scene;

/// <summary>One place where a label could stand.</summary>
/// <param name="CentreX">The middle of its box.</param>
/// <param name="CentreY">The middle of its box, downward.</param>
/// <param name="Cost">How unwelcome the place is in itself, from 0.</param>
internal readonly record struct LabelCandidate(double CentreX, double CentreY, double Cost);
