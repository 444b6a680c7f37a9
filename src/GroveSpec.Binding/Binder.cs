using GroveSpec.Binding.Use;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding;

/// <summary>Turns the tree of a file into a planting.</summary>
public static class Binder
{
    /// <summary>
    /// Binds a file and the files it uses. Every statement that can be understood is taken; one that cannot is a finding
    /// and costs nothing but itself. It never throws.
    /// </summary>
    /// <param name="tree">The file's tree.</param>
    /// <param name="file">The file's path, as findings are to name it; "-" for standard input.</param>
    /// <param name="reader">What reads the files that it uses.</param>
    /// <returns>The planting, where its facts stand, and the findings, those about the syntax among them.</returns>
    public static BoundPlanting Bind(SyntaxTree tree, string file, IFileReader reader) => new PlantingBinder(tree, file).Bind(reader);
}
