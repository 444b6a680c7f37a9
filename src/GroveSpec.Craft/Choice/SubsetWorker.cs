using System.Numerics;

namespace GroveSpec.Craft.Choice;

/// <summary>Does the work of a search, as far as one thread does it.</summary>
/// <param name="score">The score, of which this has the use alone.</param>
/// <param name="best">Takes the best sets.</param>
/// <param name="cancellation">Ends the search.</param>
internal sealed class SubsetWorker(ISubsetScore score, BestSets best, CancellationToken cancellation)
{
    /// <summary>How many steps were taken: bounds that were worked out and sets that were scored.</summary>
    public long Steps { get; private set; }

    private double Limit => best.Limit + BestSets.Hair;

    /// <summary>Works out the least that things from each place on add among themselves, as far as any set may still be one of the best.</summary>
    /// <param name="stage">The search.</param>
    /// <returns>Whether any may. No, where what any has to take from some place on adds too much.</returns>
    public bool Prepare(SubsetStage stage)
    {
        var bound = score.Bound(stage.Kept, stage.Possible, stage.Size, Limit);
        for (; stage.From > 0 && bound + stage.Forced <= Limit; stage.From--)
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

        return bound + stage.Forced <= Limit;
    }

    /// <summary>Looks through all sets that hold some things and otherwise only some that come after them in the order.</summary>
    /// <param name="stage">The search, prepared.</param>
    /// <param name="depth">How many things are decided.</param>
    /// <param name="kept">Those that are kept.</param>
    public void Look(SubsetStage stage, int depth, uint kept)
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
        if (score.Bound(kept, kept | stage.Behind(depth), stage.Size, Limit - among) + among <= Limit)
        {
            if (missing == 1)
            {
                // A choice is judged about as soon as it is bounded.
                for (var place = depth; place < stage.Order.Length; place++)
                {
                    Judge(kept | (1u << stage.Order[place]));
                }

                return;
            }

            Look(stage, depth + 1, kept | (1u << stage.Order[depth]));
            Look(stage, depth + 1, kept);
        }
    }

    /// <summary>The least that so many things more behind a place add among themselves with those that were taken.</summary>
    private double LeastAmong(SubsetStage stage, int start, int depth, uint taken, int missing, double enough)
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

    private void Judge(uint kept)
    {
        Count();
        if (kept != 0)
        {
            best.Add(kept, score.Of(kept, Limit));
        }
    }

    private void Count()
    {
        if ((++Steps & 0xfff) == 0)
        {
            cancellation.ThrowIfCancellationRequested();
        }
    }
}
