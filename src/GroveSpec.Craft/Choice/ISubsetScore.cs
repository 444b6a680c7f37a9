namespace GroveSpec.Craft.Choice;

/// <summary>How good it is to keep some of a number of things, the lower the better. Sets are bits, bit n for thing n.</summary>
public interface ISubsetScore
{
    /// <summary>Parts of the search in each of which other bounds hold: every set lies in exactly one of them.</summary>
    /// <value>For each what all its sets have in common, what any of them may hold, and in which order the search decides the things; all things stand in the order.</value>
    IReadOnlyList<(uint Required, uint Allowed, IReadOnlyList<int> Order)> Parts { get; }

    /// <summary>The score of a set.</summary>
    /// <param name="kept">The set.</param>
    /// <param name="enough">A score over which it need not be told how far.</param>
    /// <returns>The score; where it is over <paramref name="enough"/>, any number over it.</returns>
    double Of(uint kept, double enough);

    /// <summary>A number that no set of a part, which holds some things and perhaps others, scores below.</summary>
    /// <param name="kept">What the sets hold.</param>
    /// <param name="possible">That and all they may hold.</param>
    /// <param name="size">How many things the sets hold.</param>
    /// <param name="enough">A bound over which it need not be told how far.</param>
    /// <returns>The bound. With nothing open it need not be the score.</returns>
    double Bound(uint kept, uint possible, int size, double enough);

    /// <summary>
    /// A part of the score that some of the things of a set are sure to add among themselves, whatever else the set holds. Where a
    /// set is made of two such parts, both may be added up, and that of the one to the bound of the other.
    /// </summary>
    /// <param name="part">Which of <see cref="Parts"/> the set lies in.</param>
    /// <param name="some">The things.</param>
    /// <param name="possible">Those and all that the set may hold besides.</param>
    /// <param name="size">How many things the set holds.</param>
    /// <returns>The part of the score, not below zero; it never falls when there are more things and as many possible.</returns>
    double Among(int part, uint some, uint possible, int size);
}
