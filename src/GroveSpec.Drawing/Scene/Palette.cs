namespace GroveSpec.Drawing.Scene;

/// <summary>
/// The colours of the plates by role, on quiet paper, on a dark page and in print. A rule in a <see cref="StyleSheet"/> names them
/// <c>$ink</c>, <c>$soft</c>, <c>$faint</c>, <c>$paper</c>, <c>$ground</c>, <c>$leaf</c> and <c>$attention</c>.
/// </summary>
internal static class Palette
{
    /// <summary>The roles, in the order of the colour tables.</summary>
    public static readonly string[] Roles = ["ink", "soft", "faint", "paper", "ground", "leaf", "attention"];

    /// <summary>On paper.</summary>
    public static readonly string[] Light = ["#26302b", "#6f7a72", "#b9c0b8", "#fcfbf7", "#fff", "#dfe5da", "#9a3324"];

    /// <summary>On a white sheet: no tint on the paper, all else as on quiet paper.</summary>
    public static readonly string[] White = ["#26302b", "#6f7a72", "#b9c0b8", "#fff", "#fff", "#dfe5da", "#9a3324"];

    /// <summary>On a dark page: the attention is light enough for small text (7:1 against the ground by the WCAG 2 formula).</summary>
    public static readonly string[] Dark = ["#e4e7df", "#a3ada5", "#566059", "#191d1a", "#1f2421", "#39443b", "#f0917f"];

    /// <summary>In print: ink says everything.</summary>
    public static readonly string[] Print = ["#000", "#333", "#777", "#fff", "#fff", "#fff", "#000"];
}
