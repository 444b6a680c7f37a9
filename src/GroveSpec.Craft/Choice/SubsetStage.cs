using System.Numerics;

namespace GroveSpec.Craft.Choice;

/// <summary>The search of one part of all sets for those of one size: in which order things are decided, and what is known beforehand of the last of them.</summary>
internal sealed class SubsetStage
{
    /// <summary>From so many sets on a search is worth splitting; before that it is done sooner than it is dealt out.</summary>
    private const double LargeFrom = 4096;

    /// <summary>How many things are decided when it is split: at most two to the power of it are dealt out.</summary>
    private const int SplitDepth = 5;

    private readonly uint[] behind;
    private double[]? among;

    /// <summary>Lays out a search.</summary>
    /// <param name="part">Which of the score's parts.</param>
    /// <param name="size">How many things a set holds.</param>
    /// <param name="order">The things that are decided, in that order.</param>
    /// <param name="kept">What every set holds.</param>
    /// <param name="possible">What a set may hold, those included.</param>
    public SubsetStage(int part, int size, int[] order, uint kept, uint possible)
    {
        (Part, Size, Order, Kept, Possible) = (part, size, order, kept, possible);
        (Missing, From) = (size - BitOperations.PopCount(kept), order.Length);
        behind = new uint[order.Length + 1];
        for (var depth = order.Length - 1; depth >= 0; depth--)
        {
            behind[depth] = behind[depth + 1] | (1u << order[depth]);
        }
    }

    /// <summary>Which of the score's parts.</summary>
    public int Part { get; }

    /// <summary>How many things a set holds.</summary>
    public int Size { get; }

    /// <summary>The things that are decided, in that order.</summary>
    public int[] Order { get; }

    /// <summary>What every set holds.</summary>
    public uint Kept { get; }

    /// <summary>What a set may hold, those included.</summary>
    public uint Possible { get; }

    /// <summary>How many of those that are decided a set takes.</summary>
    public int Missing { get; }

    /// <summary>The place from which on it is known what things add among themselves.</summary>
    public int From { get; set; }

    /// <summary>The least that those add that a set has to take from there on, for before there are not as many; of more of them it may be less, since one may part two others.</summary>
    public double Forced
    {
        get
        {
            var forced = Missing > From ? double.PositiveInfinity : 0;
            for (var number = Missing - From; number <= Math.Min(Missing, Order.Length - From) && forced > 0; number++)
            {
                forced = Math.Min(forced, Among(From, number));
            }

            return forced;
        }
    }

    /// <summary>Those from a place on.</summary>
    /// <param name="depth">The place.</param>
    /// <returns>The set.</returns>
    public uint Behind(int depth) => behind[depth];

    /// <summary>All that a set may hold but those from a place on.</summary>
    /// <param name="depth">The place.</param>
    /// <returns>The set.</returns>
    public uint Before(int depth) => Possible & ~behind[depth];

    /// <summary>The least that a number of those from a place on add among themselves.</summary>
    /// <param name="depth">The place.</param>
    /// <param name="number">The number.</param>
    /// <returns>Where it is kept.</returns>
    public ref double Among(int depth, int number) => ref (among ??= new double[behind.Length * (Missing + 1)])[(depth * (Missing + 1)) + number];

    /// <summary>Splits the search into some that have no set in common and all sets together.</summary>
    /// <returns>For each how many things are decided and which are kept.</returns>
    public IEnumerable<(int Depth, uint Kept)> Split()
    {
        var sets = 1.0;
        for (var number = 1; number <= Missing; number++)
        {
            sets *= (Order.Length - Missing + number) / (double)number;
        }

        var depth = sets < LargeFrom ? 0 : SplitDepth;
        for (var left = (1u << depth) - 1; ; left--)
        {
            // The first thing is the highest bit, so that those come first that hold the first things.
            var kept = Kept;
            for (var place = 0; place < depth; place++)
            {
                kept |= (left >> (depth - 1 - place) & 1) != 0 ? 1u << Order[place] : 0;
            }

            if (Size - BitOperations.PopCount(kept) is var missing && missing >= 0 && missing <= Order.Length - depth)
            {
                yield return (depth, kept);
            }

            if (left == 0)
            {
                yield break;
            }
        }
    }
}
