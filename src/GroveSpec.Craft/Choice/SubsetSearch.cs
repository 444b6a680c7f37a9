using System.Numerics;

namespace GroveSpec.Craft.Choice;

/// <summary>
/// Finds the best set by branch and bound (Land and Doig 1960, "An automatic method of solving discrete programming problems"), with the
/// least that things not yet decided add among themselves worked out beforehand from the last on, each from those behind it
/// (Russian doll search: Verfaillie, Lemaître and Schiex 1996; both methods from memory). Exact.
/// </summary>
public sealed class SubsetSearch
{
    private const double Hair = 1e-9;

    private readonly ISubsetScore score;
    private readonly uint fixedIn;
    private readonly uint allowed;
    private readonly CancellationToken cancellation;
    private readonly Dictionary<(int Part, int Size), Stage> stages = [];
    private Func<uint, bool> isWanted = _ => true;
    private uint best;
    private double least;

    /// <summary>Prepares searches by one score.</summary>
    /// <param name="score">The score.</param>
    /// <param name="fixedIn">What every set holds.</param>
    /// <param name="allowed">What a set may hold, what is fixed included.</param>
    /// <param name="cancellation">Ends the search.</param>
    public SubsetSearch(ISubsetScore score, uint fixedIn, uint allowed, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(score);
        (this.score, this.fixedIn, this.allowed, this.cancellation) = (score, fixedIn, allowed, cancellation);
    }

    /// <summary>How many steps were taken so far: bounds that were worked out and sets that were scored.</summary>
    public long Steps { get; private set; }

    /// <summary>Finds the best set.</summary>
    /// <param name="sizes">How many things it may hold: the least and the most.</param>
    /// <param name="wanted">Whether a set counts; asked last, and only of sets that would be the best.</param>
    /// <param name="guess">A set to begin with, which must be one that counts; 0 for none. It changes only how long the search takes.</param>
    /// <returns>
    /// The best set with its score, null where there is none. Of sets that score alike within a billionth, the one whose first
    /// thing that the other lacks comes first is the best.
    /// </returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public (uint Kept, double Score)? Find((int Least, int Most) sizes, Func<uint, bool> wanted, uint guess)
    {
        (isWanted, best) = (wanted, guess);
        least = guess == 0 ? double.PositiveInfinity : score.Of(guess, double.PositiveInfinity);
        for (var size = sizes.Least; size <= sizes.Most; size++)
        {
            for (var part = 0; part < score.Parts.Count; part++)
            {
                var (required, within, _) = score.Parts[part];
                var (kept, possible) = (fixedIn | required, allowed & within);
                if ((kept & ~possible) == 0 && BitOperations.PopCount(kept) <= size && BitOperations.PopCount(possible) >= size
                    && score.Bound(kept, possible, size, least + Hair) is var bound && bound <= least + Hair
                    && StageOf(part, kept, possible, size, least + Hair - bound) is { } stage)
                {
                    Look(stage, 0, kept);
                }
            }
        }

        return best == 0 ? null : (best, least);
    }

    /// <summary>The search of a part for one size, with the least that things from each place on add among themselves.</summary>
    /// <returns>The stage; null where what any set has to take from some place on adds more than is left.</returns>
    private Stage? StageOf(int part, uint kept, uint possible, int size, double left)
    {
        if (!stages.TryGetValue((part, size), out var stage))
        {
            stage = new Stage(part, size, [.. score.Parts[part].Order.Where(thing => ((possible & ~kept) >> thing & 1) != 0)], possible, size - BitOperations.PopCount(kept));
            stages[(part, size)] = stage;
        }

        for (; stage.From > 0 && stage.Forced <= left; stage.From--)
        {
            // Before a place no more can have been taken than there are, so fewer are never asked for from it on.
            var depth = stage.From - 1;
            for (var number = Math.Max(1, stage.Missing - depth); number <= Math.Min(stage.Missing, stage.Order.Length - depth); number++)
            {
                // Without this thing it is as behind it, if there are as many; with it that is searched.
                var without = number < stage.Order.Length - depth ? stage.Among(depth + 1, number) : double.PositiveInfinity;
                stage.Among(depth, number) = LeastAmong(stage, depth, depth + 1, 1u << stage.Order[depth], number - 1, without);
            }
        }

        return stage.Forced <= left ? stage : null;
    }

    /// <summary>The least that so many things more behind a place add among themselves with those that were taken.</summary>
    private double LeastAmong(Stage stage, int start, int depth, uint taken, int missing, double enough)
    {
        if (missing > stage.Order.Length - depth)
        {
            return enough;
        }

        var sure = score.Among(stage.Part, taken, stage.Before(start) | taken | (missing == 0 ? 0 : stage.Behind(depth)), stage.Size);
        Count();
        if (sure + stage.Among(depth, missing) >= enough)
        {
            return enough;
        }

        if (missing == 0)
        {
            return sure;
        }

        var with = LeastAmong(stage, start, depth + 1, taken | (1u << stage.Order[depth]), missing - 1, enough);
        return LeastAmong(stage, start, depth + 1, taken, missing, with);
    }

    private void Count()
    {
        if ((++Steps & 0xfff) == 0)
        {
            cancellation.ThrowIfCancellationRequested();
        }
    }

    private void Look(Stage stage, int depth, uint kept)
    {
        var missing = stage.Size - BitOperations.PopCount(kept);
        var left = stage.Order.Length - depth;
        if (missing == 0 || missing == left)
        {
            Judge(missing == 0 ? kept : kept | stage.Behind(depth));
            return;
        }

        if (missing < 0 || missing > left)
        {
            return;
        }

        Count();
        var among = stage.Among(depth, missing);
        if (score.Bound(kept, kept | stage.Behind(depth), stage.Size, least + Hair - among) + among <= least + Hair)
        {
            Look(stage, depth + 1, kept | (1u << stage.Order[depth]));
            Look(stage, depth + 1, kept);
        }
    }

    private void Judge(uint kept)
    {
        Count();
        var found = score.Of(kept, least + Hair);
        if (found > least + Hair || kept == best || kept == 0)
        {
            return;
        }

        if ((found < least - Hair || best == 0 || IsBefore(kept, best)) && isWanted(kept))
        {
            (best, least) = (kept, Math.Min(found, least));
        }
    }

    private static bool IsBefore(uint one, uint other) => BitOperations.TrailingZeroCount(one ^ other) is var first && first < 32 && (one >> first & 1) != 0;

    /// <summary>The search of one part for sets of one size.</summary>
    private sealed class Stage
    {
        private readonly uint[] behind;
        private readonly uint possible;
        private readonly double[] among;

        public Stage(int part, int size, int[] order, uint possible, int missing)
        {
            (Part, Size, Order, this.possible, Missing, From) = (part, size, order, possible, missing, order.Length);
            (behind, among) = (new uint[order.Length + 1], new double[(order.Length + 1) * (missing + 1)]);
            for (var depth = order.Length - 1; depth >= 0; depth--)
            {
                behind[depth] = behind[depth + 1] | (1u << order[depth]);
            }
        }

        public int Part { get; }

        public int Size { get; }

        /// <summary>The things that are decided, in that order.</summary>
        public int[] Order { get; }

        /// <summary>How many of them a set takes.</summary>
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
        public uint Behind(int depth) => behind[depth];

        /// <summary>All that a set may hold but those from a place on.</summary>
        public uint Before(int depth) => possible & ~behind[depth];

        /// <summary>The least that a number of those from a place on add among themselves.</summary>
        public ref double Among(int depth, int number) => ref among[(depth * (Missing + 1)) + number];
    }
}
