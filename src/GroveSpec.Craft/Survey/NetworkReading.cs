namespace GroveSpec.Craft.Survey;

/// <summary>A distance between two trunks of a network.</summary>
/// <param name="From">The one's number in the network.</param>
/// <param name="To">The other's.</param>
/// <param name="Millimetres">From centre to centre, above zero.</param>
/// <param name="Source">The reading's number in the file.</param>
internal readonly record struct NetworkReading(int From, int To, double Millimetres, int Source);
