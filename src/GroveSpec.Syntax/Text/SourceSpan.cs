namespace GroveSpec.Syntax.Text;

/// <summary>A run of text in a named file.</summary>
/// <param name="File">The file's path as the user gave it, "-" for standard input.</param>
/// <param name="Span">Where in it.</param>
public readonly record struct SourceSpan(string File, TextSpan Span);
