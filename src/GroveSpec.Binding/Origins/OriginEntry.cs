using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Origins;

/// <summary>What stands behind an origin: a statement of a file, or a row of one.</summary>
/// <param name="Scope">The file.</param>
/// <param name="Statement">The statement.</param>
/// <param name="Row">The row of a measured block; null for the statement itself.</param>
internal readonly record struct OriginEntry(BindingScope Scope, Statement Statement, ReadingSyntax? Row)
{
    /// <summary>The file's path.</summary>
    public string File => Scope.File;

    /// <summary>The file's text.</summary>
    public SourceText Text => Scope.Tree.Text;
}
