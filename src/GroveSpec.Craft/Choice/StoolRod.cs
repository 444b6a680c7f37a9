using System.Collections.Immutable;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Choice;

/// <summary>The triples of a stool through which one straight rod could pass, whichever of its trunks stand.</summary>
/// <param name="Middle">The trunk in the middle.</param>
/// <param name="Ends">The two at the ends, as a set.</param>
/// <param name="Three">All three, as a set.</param>
public readonly record struct StoolRod(int Middle, uint Ends, uint Three)
{
    /// <summary>All triples within a limit, as <see cref="RodSearch.Find"/> finds them under seven trunks; from seven on both ends must be neighbours of the middle besides.</summary>
    /// <param name="trunks">The trunks, at most <see cref="NeighbourTable.MostTrunks"/>.</param>
    /// <param name="limit">The largest closeness that counts, a bare ratio.</param>
    /// <returns>The triples.</returns>
    public static ImmutableArray<StoolRod> Of(StandingTrunks trunks, double limit) =>
    [
        .. RodSearch.OfAll(trunks, limit).Select(rod => new StoolRod(rod.Middle, (1u << rod.End) | (1u << rod.OtherEnd), (1u << rod.Middle) | (1u << rod.End) | (1u << rod.OtherEnd))),
    ];
}
