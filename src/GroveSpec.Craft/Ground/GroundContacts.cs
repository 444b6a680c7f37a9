using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>The trunks of a stand with a newcomer that touch, as <see cref="Contacts"/> finds them.</summary>
public sealed class GroundContacts
{
    private readonly GroundStand stand;
    private readonly bool isGrownTogether;
    private readonly (int Thinner, int Thicker, double Gap)[] deepest;
    private readonly double reach;
    private readonly bool doOthersTouch;

    /// <summary>Lays out the tables.</summary>
    /// <param name="stand">The trunks.</param>
    /// <param name="isGrownTogether">Whether they share one base, so that bark may meet.</param>
    public GroundContacts(GroundStand stand, bool isGrownTogether)
    {
        ArgumentNullException.ThrowIfNull(stand);
        (this.stand, this.isGrownTogether) = (stand, isGrownTogether);
        deepest = new (int, int, double)[stand.Count];
        for (var thinner = 0; thinner < stand.Count; thinner++)
        {
            deepest[thinner] = (thinner, -1, double.PositiveInfinity);
            for (var thicker = 0; thicker < stand.Count; thicker++)
            {
                if (thinner != thicker && thinner != stand.Newcomer && thicker != stand.Newcomer)
                {
                    Offer(ref deepest[thinner], thicker);
                }
            }

            reach = Math.Max(reach, stand.Sections[thinner].Diameter.Nanometres);
        }

        doOthersTouch = Array.Exists(deepest, contact => contact.Thicker >= 0);
        reach = (reach + stand.Sections[stand.Newcomer].Diameter.Nanometres + 4) / 2;
    }

    /// <summary>Finds the pairs where the newcomer stands now; after <see cref="GroundStand.Set"/>.</summary>
    /// <param name="found">Takes the two trunks of each, as a set; as long as there are trunks.</param>
    /// <returns>How many were found.</returns>
    public int Find(Span<ulong> found)
    {
        var (count, newcomer) = (0, stand.Newcomer);
        if (!doOthersTouch && stand.NearestSquare > reach * reach * (1 + 1e-9))
        {
            return 0;
        }

        var own = (Thinner: newcomer, Thicker: -1, Gap: double.PositiveInfinity);
        for (var trunk = 0; trunk < stand.Count; trunk++)
        {
            if (trunk == newcomer)
            {
                continue;
            }

            var contact = deepest[trunk];
            if (stand.Squares[trunk] <= reach * reach * (1 + 1e-9))
            {
                Offer(ref own, trunk);
                Offer(ref contact, newcomer);
            }

            if (contact.Thicker >= 0)
            {
                found[count++] = (1UL << trunk) | (1UL << contact.Thicker);
            }
        }

        if (own.Thicker >= 0)
        {
            found[count++] = (1UL << newcomer) | (1UL << own.Thicker);
        }

        return count;
    }

    /// <summary>Of trunks that it reaches as deep into, the first counts.</summary>
    private void Offer(ref (int Thinner, int Thicker, double Gap) known, int thicker)
    {
        var sections = stand.Sections;
        Length one = sections[known.Thinner].Diameter, other = sections[thicker].Diameter;
        if (!(one != other ? one < other : known.Thinner > thicker))
        {
            return;
        }

        var square = Rod.Square(sections[known.Thinner].Centre, sections[thicker].Centre);
        Int128 both = other.Nanometres + (isGrownTogether ? 0 : one.Nanometres);
        if (4 * square > both * both)
        {
            return;
        }

        var gap = Math.Sqrt((double)square) - ((one.Nanometres + (double)other.Nanometres) / 2);
        if (gap < known.Gap || (gap == known.Gap && thicker < known.Thicker))
        {
            known = (known.Thinner, thicker, gap);
        }
    }
}
