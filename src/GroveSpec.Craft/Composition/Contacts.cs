using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>Finds trunks whose bark touches or overlaps.</summary>
public static class Contacts
{
    /// <summary>A heap can hold any number of trunks; of each so many of the nearest are looked at.</summary>
    private const int MostLookedAt = 24;

    /// <summary>For each trunk that touches one at least as thick, the one it reaches deepest into.</summary>
    /// <param name="trunks">The trunks; one without a known diameter is a point.</param>
    /// <param name="isGrownTogether">
    /// Whether the trunks share one base, so that bark may meet: then only a trunk whose centre stands within another's
    /// bark counts.
    /// </param>
    /// <returns>The thinner and the thicker trunk as places in <see cref="StandingTrunks.Trunks"/>, with the gap between their bark, zero or negative; sorted by both.</returns>
    public static ImmutableArray<(int Thinner, int Thicker, Length Gap)> Find(StandingTrunks trunks, bool isGrownTogether)
    {
        var deepest = new Dictionary<int, (int Thicker, double Gap)>();
        Span<int> near = stackalloc int[MostLookedAt];
        for (var thicker = 0; thicker < trunks.Count; thicker++)
        {
            var section = trunks.Sections[thicker];

            // Whatever is at most as thick and touches stands within one diameter, and a nanometre for odd halves.
            var count = trunks.Near(thicker, section.Diameter + new Length(1), near);
            for (var place = 0; place < count; place++)
            {
                var thinner = near[place];
                if (IsThinner(trunks, thinner, thicker) && Touches(trunks, thinner, thicker, isGrownTogether))
                {
                    var gap = GapInNanometres(trunks, thinner, thicker);
                    if (!deepest.TryGetValue(thinner, out var known) || gap < known.Gap)
                    {
                        deepest[thinner] = (thicker, gap);
                    }
                }
            }
        }

        return [.. deepest.Select(pair => (pair.Key, pair.Value.Thicker, new Length((long)Math.Round(pair.Value.Gap)))).OrderBy(pair => pair.Key)];
    }

    /// <summary>Of two trunks that touch, whether it is the one that is told as thinner; of equals the later is.</summary>
    internal static bool IsThinner(StandingTrunks trunks, int one, int other)
    {
        Length left = trunks.Sections[one].Diameter, right = trunks.Sections[other].Diameter;
        return left != right ? left < right : one > other;
    }

    /// <summary>Whether two trunks touch, or for those of one base, whether the thinner stands within the thicker.</summary>
    internal static bool Touches(StandingTrunks trunks, int thinner, int thicker, bool isGrownTogether)
    {
        Int128 reach = trunks.Sections[thicker].Diameter.Nanometres + (isGrownTogether ? 0 : trunks.Sections[thinner].Diameter.Nanometres);
        return 4 * trunks.Square(thinner, thicker) <= reach * reach;
    }

    /// <summary>From bark to bark in nanometres, below zero where they overlap.</summary>
    internal static double GapInNanometres(StandingTrunks trunks, int thinner, int thicker) =>
        Math.Sqrt((double)trunks.Square(thinner, thicker)) - ((trunks.Sections[thinner].Diameter.Nanometres + (double)trunks.Sections[thicker].Diameter.Nanometres) / 2);
}
