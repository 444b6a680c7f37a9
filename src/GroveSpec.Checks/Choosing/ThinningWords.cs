using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Choosing;

/// <summary>Says what a choice of trunks comes to.</summary>
internal static class ThinningWords
{
    private const double OffBalance = 0.05;

    /// <summary>Why a choice is good, and what it leaves.</summary>
    /// <param name="stand">What would stand.</param>
    /// <param name="now">What stands now.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>One sentence.</returns>
    public static string Why(ThinnedStand stand, ThinnedStand now, UnitSystem units)
    {
        var found = stand.Found switch
        {
            0 => $"The checks of composition then find nothing, where now they find {now.Found}",
            _ => $"The checks of composition then find {stand.Found} ({Wording.Kinds(stand.Findings)}), where now they find {now.Found}",
        };
        var main = stand.Main is { } name ? $"{Wording.Name(name)} stays as the main trunk"
            : now.Main is { } gone ? $"{Wording.Name(gone)}, the main trunk, goes" : "";
        var roles = stand.LostRoles.IsEmpty ? "" : $"nobody is left to be {Wording.List(stand.LostRoles)}";
        var gaps = stand.Gaps is { } gap ? $"gaps run from {LengthWording.Say(gap.Least, units)} to {LengthWording.Say(gap.Most, units)}" : "";
        var sizes = stand.Diameters is { } thick && thick.Least < thick.Most ? $"thicknesses from {LengthWording.Say(thick.Least, units)} to {LengthWording.Say(thick.Most, units)}" : "";
        var balance = stand.Parts.Balance < OffBalance * ThinningScore.SoftWeight
            ? "the weight of the wood lies over the middle"
            : $"the weight of the wood lies {LengthWording.Say(stand.Lopsided.Distance, units)} {Wording.Toward(stand.Lopsided.Toward)} of the middle";
        var parts = new[] { main, roles, gaps, sizes, balance }.Where(part => part.Length > 0).ToList();
        return $"{(now.Found == 0 && stand.Found == 0 ? "The checks of composition find nothing, as now" : found)}; {string.Join(", ", parts.SkipLast(1))}{(parts.Count > 1 ? ", and " : "")}{parts[^1]}.";
    }
}
