using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Origins;

/// <summary>What stands behind an origin: a statement of a file, or a row of one.</summary>
/// <param name="File">The file's path.</param>
/// <param name="Statement">The statement.</param>
/// <param name="Row">The row of a measured block; null for the statement itself.</param>
internal readonly record struct OriginEntry(string File, Statement Statement, ReadingSyntax? Row);
