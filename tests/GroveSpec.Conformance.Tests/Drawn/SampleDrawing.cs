namespace GroveSpec.Conformance.Tests.Drawn;

/// <summary>A drawing of a sample.</summary>
/// <param name="Sample">The sample's name.</param>
/// <param name="View">The view's name.</param>
/// <param name="Svg">The drawing.</param>
internal sealed record SampleDrawing(string Sample, string View, string Svg);
