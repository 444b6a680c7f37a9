using System.Numerics;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Choice;

/// <summary>Which trunks would touch if only some of a stool stood: what <see cref="Contacts.Find"/> finds among those.</summary>
public sealed class ContactTable
{
    private readonly int[][] deepestFirst;
    private readonly uint[] reached;

    /// <summary>Looks at every pair once.</summary>
    /// <param name="trunks">The trunks, at most <see cref="NeighbourTable.MostTrunks"/>.</param>
    /// <param name="isGrownTogether">Whether the trunks share one base, as for <see cref="Contacts.Find"/>.</param>
    public ContactTable(StandingTrunks trunks, bool isGrownTogether)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        (deepestFirst, reached) = (new int[trunks.Count][], new uint[trunks.Count]);
        for (var thinner = 0; thinner < trunks.Count; thinner++)
        {
            var one = thinner;
            deepestFirst[one] =
            [
                .. Enumerable.Range(0, trunks.Count)
                    .Where(other => other != one && Contacts.IsThinner(trunks, one, other) && Contacts.Touches(trunks, one, other, isGrownTogether))
                    .OrderBy(other => Contacts.GapInNanometres(trunks, one, other)),
            ];
            foreach (var other in deepestFirst[one])
            {
                reached[one] |= 1u << other;
                Touching |= (1u << one) | (1u << other);
            }
        }
    }

    /// <summary>All trunks that touch another.</summary>
    public uint Touching { get; }

    /// <summary>Those at least as thick that a trunk touches.</summary>
    /// <param name="thinner">The trunk.</param>
    /// <returns>The set.</returns>
    public uint ReachedBy(int thinner) => reached[thinner];

    /// <summary>The trunks that touch among those that stand.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="pairs">Takes each thinner trunk with the one it reaches deepest into, as sets; room for as many as stand.</param>
    /// <returns>How many there are.</returns>
    public int Find(uint kept, Span<uint> pairs)
    {
        var found = 0;
        for (var rest = kept & Touching; rest != 0; rest &= rest - 1)
        {
            var thinner = BitOperations.TrailingZeroCount(rest);
            foreach (var thicker in deepestFirst[thinner])
            {
                if ((kept >> thicker & 1) != 0)
                {
                    pairs[found++] = (1u << thinner) | (1u << thicker);
                    break;
                }
            }
        }

        return found;
    }
}
