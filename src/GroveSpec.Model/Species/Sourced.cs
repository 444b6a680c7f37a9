namespace GroveSpec.Model.Species;

/// <summary>A value of a profile with where the value comes from.</summary>
/// <typeparam name="T">What kind of value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Source">A published source, or "from memory", or "common practice".</param>
/// <param name="Origin">Where it was written.</param>
public readonly record struct Sourced<T>(T Value, string Source, Origin Origin);
