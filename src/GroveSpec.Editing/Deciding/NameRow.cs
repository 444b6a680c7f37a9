namespace GroveSpec.Editing.Deciding;

/// <summary>Says names one after the other.</summary>
internal static class NameRow
{
    /// <summary>The names as they are written; how they are kept harmless is for who shows them.</summary>
    /// <param name="names">The names, at least one.</param>
    /// <returns>Such as "A, B and C".</returns>
    public static string Of(IReadOnlyList<string> names) => names.Count == 1 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";
}
