namespace GroveSpec.Model;

/// <summary>
/// Where a fact came from, as an opaque name that stays the same while other lines change,
/// such as <c>trunk:A</c> or <c>trunk:A/height</c>. Only the binder that made it can turn it into a place in a text.
/// </summary>
/// <param name="Id">The name. It may hold text from the file, so whoever writes it out must escape it.</param>
public readonly record struct Origin(string Id)
{
    /// <summary>The origin of something nobody wrote: a default.</summary>
    public static readonly Origin Default = new("default");

    /// <summary>The origin of a part of this fact.</summary>
    /// <param name="part">The part's name within the fact.</param>
    /// <returns>The part's origin.</returns>
    public Origin Part(string part) => new($"{Id}/{part}");

    /// <inheritdoc/>
    public override string ToString() => Id;
}
