using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Use;

/// <summary>A file that was used and read.</summary>
/// <param name="Path">Its path as findings name it.</param>
/// <param name="Tree">Its tree.</param>
public sealed record UsedFile(string Path, SyntaxTree Tree);
