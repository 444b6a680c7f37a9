using GroveSpec.Model;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks;

/// <summary>Turns the origins of facts into places in files. The binder makes one with each planting.</summary>
public interface IOriginTable
{
    /// <summary>Where a fact was written.</summary>
    /// <param name="origin">The fact's origin; for an unknown part, the place of the fact it belongs to.</param>
    /// <returns>Its place; the start of the planting's file for <see cref="Origin.Default"/>.</returns>
    SourceSpan Locate(Origin origin);

    /// <summary>The whole statement that states a fact, without the line end: from its first word to its last.</summary>
    /// <param name="origin">The fact's origin.</param>
    /// <returns>Its place.</returns>
    SourceSpan StatementOf(Origin origin);

    /// <summary>The edit that writes lines of their own behind a statement, and behind the comment that ends its line.</summary>
    /// <param name="origin">The origin of a fact that the statement states.</param>
    /// <param name="lines">The lines, without line ends; the file's own are put between them.</param>
    /// <returns>The edit; at the start of the planting's file for <see cref="Origin.Default"/>.</returns>
    TextEdit WriteBehind(Origin origin, params ReadOnlySpan<string> lines);
}
