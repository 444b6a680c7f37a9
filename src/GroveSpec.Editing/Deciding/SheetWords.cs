using GroveSpec.Checks;

namespace GroveSpec.Editing.Deciding;

/// <summary>What several sheets say alike.</summary>
internal static class SheetWords
{
    /// <summary>Names one after the other, as they are written; how they are kept harmless is for who shows them.</summary>
    /// <param name="names">The names, at least one.</param>
    /// <returns>Such as "A, B and C".</returns>
    public static string Row(IReadOnlyList<string> names) => names.Count == 1 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    /// <summary>Findings with the numbers that they have in a picture.</summary>
    /// <param name="findings">The findings that the picture was drawn with.</param>
    /// <returns>A sentence for each.</returns>
    public static IEnumerable<string> Numbered(IEnumerable<Finding> findings) => findings.Select((finding, place) => $"({place + 1}) {finding.Message}");
}
