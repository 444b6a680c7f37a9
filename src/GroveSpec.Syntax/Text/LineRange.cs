namespace GroveSpec.Syntax.Text;

/// <summary>A run of text by line and character.</summary>
/// <param name="Start">Its first place.</param>
/// <param name="End">The first place after it.</param>
public readonly record struct LineRange(LinePosition Start, LinePosition End);
