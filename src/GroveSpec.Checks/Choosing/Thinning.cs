using System.Collections.Immutable;
using System.Numerics;
using GroveSpec.Craft.Choice;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Choosing;

/// <summary>Finds which trunks to keep.</summary>
public static class Thinning
{
    /// <summary>From more trunks than these none is chosen: there are too many choices to look at.</summary>
    public const int MostTrunks = 24;

    /// <summary>How many suggestions are made at most.</summary>
    public const int MostSuggestions = 3;

    /// <summary>What a choice may score more than a suggestion and still be nearly as good.</summary>
    public const double NearlyAsGood = 0.25;

    private const int MostVariants = 4;

    /// <summary>
    /// Finds the best choice; then the best of those that differ from it by more than one trunk exchanged, left out or put in;
    /// then the best of those that differ so from both. Each is exactly the best: no choice that counts scores less.
    /// </summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">What is asked.</param>
    /// <param name="sideBySide">
    /// Does so many pieces of work, each told its number from 0, at once or one after another; null for one after another. The
    /// suggestions are the same either way.
    /// </param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The suggestions, or why there are none.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static ThinningAnswer Choose(CheckContext context, ThinningWish wish, Action<int, Action<int>>? sideBySide = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(wish);
        var without = wish.Without.ToHashSet(StringComparer.Ordinal);
        var open = ThinnedContext.Of(context, trunk => without.Contains(trunk.Name));
        ImmutableArray<string> unplaced = [.. open.State.Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: null }).Select(trunk => trunk.Name).Order(StringComparer.Ordinal)];
        if (ThinningObstacle.Of(context, open, wish, unplaced) is { } obstacle)
        {
            return new ThinningAnswer { Obstacle = obstacle, IsMisasked = ThinningObstacle.IsMisasked(context, wish), WithoutPlace = unplaced };
        }

        var search = new Search(open, wish, unplaced.Length);
        var report = new ThinningReport(context, open, search.Score);
        var suggestions = ImmutableArray.CreateBuilder<ThinningSuggestion>();
        foreach (var (kept, score) in search.Leads(sideBySide, cancellation))
        {
            suggestions.Add(report.Tell(kept, search.Near(kept, score)));
        }

        return new ThinningAnswer { Now = report.Now, WithoutPlace = unplaced, Suggestions = suggestions.ToImmutable(), Steps = search.Steps };
    }

    /// <summary>Whether two choices differ by at most one trunk exchanged, left out or put in.</summary>
    internal static bool AreNear(uint one, uint other) => BitOperations.PopCount(one & ~other) <= 1 && BitOperations.PopCount(other & ~one) <= 1;

    private sealed class Search
    {
        private readonly uint fixedIn;
        private readonly uint all;
        private readonly (int Least, int Most) sizes;

        public Search(CheckContext open, ThinningWish wish, int unplaced)
        {
            Score = new ThinningScore(open);
            var trunks = open.Standing.Trunks;
            var with = wish.With.ToHashSet(StringComparer.Ordinal);
            for (var index = 0; index < trunks.Length; index++)
            {
                all |= 1u << index;
                fixedIn |= with.Contains(trunks[index].Name) ? 1u << index : 0;
            }

            sizes = (Math.Max(1, wish.Least - unplaced), Math.Min(trunks.Length, wish.Most - unplaced));
        }

        public ThinningScore Score { get; }

        /// <summary>How many choices were scored or bounded so far.</summary>
        public long Steps { get; private set; }

        public ImmutableArray<(uint Kept, double Score)> Leads(Action<int, Action<int>>? sideBySide, CancellationToken cancellation)
        {
            var scores = SideBySide.OneEach(Score, Score.Another, sideBySide);
            var search = new SubsetSearch(scores, fixedIn, all, sideBySide ?? SideBySide.OneAfterAnother, cancellation);
            var leads = search.Find(sizes, MostSuggestions, AreNear, Guesses());
            Steps += search.Steps;
            return leads;
        }

        /// <summary>The choices near one that score little more.</summary>
        public List<(uint Kept, double Score)> Near(uint lead, double score)
        {
            var near = new List<(uint Kept, double Score)>();
            foreach (var kept in Changes(lead))
            {
                Steps++;
                if (Score.Of(kept, score + NearlyAsGood) is var found && found <= score + NearlyAsGood)
                {
                    near.Add((kept, found));
                }
            }

            return [.. near.OrderBy(one => Math.Round(one.Score, 9)).ThenBy(one => BitOperations.PopCount(one.Kept ^ lead)).ThenBy(one => one.Kept).Take(MostVariants)];
        }

        private List<uint> Guesses()
        {
            var guesses = new List<uint>();
            while (guesses.Count < MostSuggestions && Guess(kept => !guesses.Any(guess => AreNear(kept, guess))) is not 0 and var guess)
            {
                guesses.Add(guess);
            }

            return guesses;
        }

        /// <summary>A good choice to begin with: the worst trunk is taken out until few enough stand, and then changed for better as long as that helps.</summary>
        private uint Guess(Func<uint, bool> isWanted)
        {
            var kept = all;
            var (best, least) = (0u, double.PositiveInfinity);
            while (BitOperations.PopCount(kept) > sizes.Most)
            {
                kept = Best(Bits(kept & ~fixedIn).Select(bit => kept & ~bit), _ => true).Kept;
            }

            for (; kept != 0; kept = Best(Changes(kept), isWanted) is var next && next.Score < least ? next.Kept : 0)
            {
                if (isWanted(kept))
                {
                    (best, least) = (kept, Score.Of(kept, double.PositiveInfinity));
                }
            }

            return best;
        }

        private (uint Kept, double Score) Best(IEnumerable<uint> choices, Func<uint, bool> isWanted)
        {
            var (best, least) = (0u, double.PositiveInfinity);
            foreach (var kept in choices.Where(isWanted))
            {
                Steps++;
                if (Score.Of(kept, least) is var found && found < least)
                {
                    (best, least) = (kept, found);
                }
            }

            return (best, least);
        }

        /// <summary>All choices that count and differ by one trunk exchanged, left out or put in.</summary>
        private IEnumerable<uint> Changes(uint kept)
        {
            var size = BitOperations.PopCount(kept);
            foreach (var gone in Bits(kept & ~fixedIn).Append(0u))
            {
                foreach (var come in Bits(all & ~kept).Append(0u))
                {
                    var changed = size - BitOperations.PopCount(gone) + BitOperations.PopCount(come);
                    if ((gone | come) != 0 && changed >= sizes.Least && changed <= sizes.Most)
                    {
                        yield return (kept & ~gone) | come;
                    }
                }
            }
        }

        private static IEnumerable<uint> Bits(uint set)
        {
            for (var rest = set; rest != 0; rest &= rest - 1)
            {
                yield return rest & (~rest + 1);
            }
        }
    }
}
