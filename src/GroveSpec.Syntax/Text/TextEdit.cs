namespace GroveSpec.Syntax.Text;

/// <summary>One replacement in a file.</summary>
/// <param name="Place">What is replaced; empty to insert.</param>
/// <param name="NewText">What comes in its place.</param>
public sealed record TextEdit(SourceSpan Place, string NewText);
