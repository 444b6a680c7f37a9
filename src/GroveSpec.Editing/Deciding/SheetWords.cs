using GroveSpec.Checks;

namespace GroveSpec.Editing.Deciding;

/// <summary>What several sheets say alike.</summary>
internal static class SheetWords
{
    /// <summary>Findings with the numbers that they have in a picture.</summary>
    /// <param name="findings">The findings that the picture was drawn with.</param>
    /// <returns>A sentence for each.</returns>
    public static IEnumerable<string> Numbered(IEnumerable<Finding> findings) => findings.Select((finding, place) => $"({place + 1}) {finding.Message}");
}
