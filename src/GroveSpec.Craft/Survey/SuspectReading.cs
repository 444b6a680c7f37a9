namespace GroveSpec.Craft.Survey;

/// <summary>A reading that may be off, and how the others agree without it.</summary>
/// <param name="Reading">Its number in the network.</param>
/// <param name="SumOfSquares">The sum of squared misfits of the others without it, in mm².</param>
/// <param name="Fitted">What it should have read by the others, in millimetres from centre to centre.</param>
internal readonly record struct SuspectReading(int Reading, double SumOfSquares, double Fitted);
