using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Choosing;

/// <summary>Says what a choice of trunks comes to. Names stand in the orders as the file writes them: who goes out with the saw needs all of each.</summary>
public static class ThinningWords
{
    private const double OffBalance = 0.05;

    /// <summary>What to do.</summary>
    /// <param name="stand">What would stand, of at least one trunk.</param>
    /// <returns>A sentence, such as "Keep A and B; take out C.", which names every trunk, however many.</returns>
    public static string Order(ThinnedStand stand)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return $"Keep {Every(stand.Kept)}{(stand.TakenOut.IsEmpty ? "" : $"; take out {Every(stand.TakenOut)}")}.";
    }

    /// <summary>What comes to nearly the same.</summary>
    /// <param name="suggestion">The suggestion.</param>
    /// <returns>A sentence, such as "Nearly as good: B in place of D; without A."; an empty text where nothing does.</returns>
    public static string NearlyAsGood(ThinningSuggestion suggestion)
    {
        ArgumentNullException.ThrowIfNull(suggestion);
        return suggestion.NearlyAsGood.IsEmpty ? "" : $"Nearly as good: {string.Join("; ", suggestion.NearlyAsGood.Select(Change))}.";
    }

    /// <summary>Which trunks are kept without being weighed.</summary>
    /// <param name="answer">What was found.</param>
    /// <returns>A sentence; an empty text where every trunk has a place, or nothing is suggested.</returns>
    public static string NotWeighed(ThinningAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Obstacle is not null || answer.WithoutPlace.IsEmpty ? "" : $"Kept and counted without being weighed, because the file gives no place: {Every(answer.WithoutPlace)}.";
    }

    /// <summary>Why a choice is good, and what it leaves.</summary>
    /// <param name="stand">What would stand.</param>
    /// <param name="now">What stands now.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>One sentence.</returns>
    internal static string Why(ThinnedStand stand, ThinnedStand now, UnitSystem units)
    {
        var found = $"The checks of composition then find {(stand.Found == 0 ? "nothing" : $"{stand.Found} ({Wording.Kinds(stand.Findings)})")}, where now they find {(now.Found == 0 ? "nothing" : now.Found)}";
        var main = stand.Main is { } name ? now.Main is { } before && before != name ? $"{Wording.Name(name)} becomes the main trunk in place of {Wording.Name(before)}" : $"{Wording.Name(name)} stays as the main trunk"
            : now.Main is { } gone ? $"{Wording.Name(gone)}, the main trunk, goes" : "";
        var roles = stand.LostRoles.IsEmpty ? "" : $"nobody is left in the {(stand.LostRoles.Length == 1 ? "role" : "roles")} {Wording.List(stand.LostRoles)}";
        var gaps = stand.Gaps is { } gap ? Gaps(gap.Least, gap.Most, units) : "";
        var sizes = stand.Diameters is { } thick && thick.Least < thick.Most ? $"thicknesses from {LengthWording.Say(thick.Least, units)} to {LengthWording.Say(thick.Most, units)}" : "";
        var balance = stand.Parts.Balance < OffBalance * ThinningScore.SoftWeight
            ? "the weight of the wood lies over the middle"
            : $"the weight of the wood lies {LengthWording.Say(stand.Lopsided.Distance, units)} {Wording.Toward(stand.Lopsided.Toward)} of the middle";
        var parts = new[] { main, roles, gaps, sizes, balance }.Where(part => part.Length > 0).ToList();
        return $"{(now.Found == 0 && stand.Found == 0 ? "The checks of composition find nothing, as now" : found)}; {string.Join(", ", parts.SkipLast(1))}{(parts.Count > 1 ? ", and " : "")}{parts[^1]}.";
    }

    /// <summary>What a choice makes of findings that the file lets stand.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="stand">What would stand.</param>
    /// <returns>A sentence for each <c>accept</c> that names a trunk which goes, in the order of the file; empty where none does.</returns>
    public static ImmutableArray<string> Unneeded(Planting planting, ThinnedStand stand)
    {
        ArgumentNullException.ThrowIfNull(planting);
        ArgumentNullException.ThrowIfNull(stand);
        return
        [
            .. planting.Accepted
                .Select(accept => (Accept: accept, Gone: stand.TakenOut.Where(name => accept.Trunks.Contains(name)).ToList()))
                .Where(one => one.Gone.Count > 0)
                .Select(one => $"The file accepts {one.Accept.Check} of {Wording.List([.. one.Accept.Trunks])}, and with {Wording.List(one.Gone)} taken out that lets nothing stand any more: take that line out as well, or check hints at it (stale-accept)."),
        ];
    }

    private static string Gaps(Length least, Length most, UnitSystem units)
    {
        var (from, to) = LengthWording.SayApart(least, most, units);
        return from == to ? $"the gap between neighbours is {from}" : $"gaps run from {from} to {to}";
    }

    private static string Change(ThinningVariant variant) => (variant.Keep, variant.TakeOut) switch
    {
        ({ } keep, { } gone) => $"{keep} in place of {gone}",
        ({ } keep, null) => $"{keep} as well",
        var (_, gone) => $"without {gone}",
    };

    private static string Every(ImmutableArray<string> names) => Wording.Row(Wording.Sorted(names), int.MaxValue);
}
