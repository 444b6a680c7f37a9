using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Names;

/// <summary>One place where a name stands.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Name">The name in the form in which names are compared.</param>
/// <param name="Span">Where it stands.</param>
/// <param name="IsDeclaration">Whether the thing gets its name here.</param>
public readonly record struct NameUse(NameKind Kind, string Name, TextSpan Span, bool IsDeclaration)
{
    /// <summary>Whether another place means the same thing.</summary>
    /// <param name="other">The other place.</param>
    /// <returns>True when kind and name agree.</returns>
    public bool Means(NameUse other) => Kind == other.Kind && Name == other.Name;
}
