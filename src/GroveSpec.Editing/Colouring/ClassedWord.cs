using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Colouring;

/// <summary>A word and what it is.</summary>
/// <param name="Span">Where it stands; never over a line's end.</param>
/// <param name="Class">What it is.</param>
/// <param name="IsDeclaration">Whether something gets its name here.</param>
public readonly record struct ClassedWord(TextSpan Span, WordClass Class, bool IsDeclaration);
