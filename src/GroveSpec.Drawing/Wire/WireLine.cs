namespace GroveSpec.Drawing.Wire;

/// <summary>One line of a wire's sheet.</summary>
/// <param name="Label">What it is about, one word.</param>
/// <param name="Text">What is said, in sentences.</param>
public readonly record struct WireLine(string Label, string Text);
