namespace GroveSpec.Model;

/// <summary>A fact together with where it was written.</summary>
/// <typeparam name="T">What kind of fact.</typeparam>
/// <param name="Value">The fact.</param>
/// <param name="Origin">Where it was written.</param>
public readonly record struct Stated<T>(T Value, Origin Origin);
