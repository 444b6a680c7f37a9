namespace GroveSpec.Syntax.Text;

/// <summary>A place by line and character, as a language server counts them.</summary>
/// <param name="Line">The line, from 0.</param>
/// <param name="Character">UTF-16 code units from the line's start.</param>
public readonly record struct LinePosition(int Line, int Character);
