using System.Collections.Immutable;
using System.Numerics;

namespace GroveSpec.Craft.Choice;

/// <summary>
/// Finds the best sets by branch and bound (Land and Doig 1960, "An automatic method of solving discrete programming problems"), with the
/// least that things not yet decided add among themselves worked out beforehand from the last on, each from those behind it
/// (Russian doll search: Verfaillie, Lemaître and Schiex 1996; both methods from memory). Exact.
/// </summary>
public sealed class SubsetSearch
{
    private readonly IReadOnlyList<ISubsetScore> scores;
    private readonly uint fixedIn;
    private readonly uint allowed;
    private readonly Action<int, Action<int>> sideBySide;
    private readonly CancellationToken cancellation;

    /// <summary>Prepares a search.</summary>
    /// <param name="scores">The score; more than once, where several pieces of work may be done at once, so that each has one of its own.</param>
    /// <param name="fixedIn">What every set holds.</param>
    /// <param name="allowed">What a set may hold, what is fixed included.</param>
    /// <param name="sideBySide">Does so many pieces of work, each told its number from 0, at once or one after another. What is found is the same either way; how many steps it takes may differ.</param>
    /// <param name="cancellation">Ends the search.</param>
    public SubsetSearch(IReadOnlyList<ISubsetScore> scores, uint fixedIn, uint allowed, Action<int, Action<int>> sideBySide, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scores);
        ArgumentNullException.ThrowIfNull(sideBySide);
        (this.scores, this.fixedIn, this.allowed, this.sideBySide, this.cancellation) = (scores, fixedIn, allowed, sideBySide, cancellation);
    }

    /// <summary>How many steps were taken so far: bounds that were worked out and sets that were scored.</summary>
    public long Steps { get; private set; }

    /// <summary>Finds the best set, then the best of those that are not near it, then the best of those that are near neither, and so on.</summary>
    /// <param name="sizes">How many things a set may hold: the least and the most.</param>
    /// <param name="number">How many sets are asked for, at least one.</param>
    /// <param name="areNear">Whether two sets are so alike that only one of them counts. Every set is near itself.</param>
    /// <param name="guesses">Sets to begin with, of those that count. They change only how long the search takes.</param>
    /// <returns>
    /// The sets with their scores; fewer where there are no more. Of sets that score alike within a billionth, the one whose first
    /// thing that the other lacks comes first is the best.
    /// </returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public ImmutableArray<(uint Kept, double Score)> Find((int Least, int Most) sizes, int number, Func<uint, uint, bool> areNear, IEnumerable<uint> guesses)
    {
        ArgumentNullException.ThrowIfNull(areNear);
        ArgumentNullException.ThrowIfNull(guesses);
        var best = new BestSets(number, areNear);
        foreach (var guess in guesses)
        {
            best.Add(guess, scores[0].Of(guess, double.PositiveInfinity));
        }

        SubsetWorker[] workers = [.. scores.Select(score => new SubsetWorker(score, best, cancellation))];
        var stages = Stages(sizes);
        do
        {
            var isOpen = new bool[stages.Count];
            InTurns(stages.Count, (worker, stage) => isOpen[stage] = worker.Prepare(stages[stage]));
            var open = stages.Where((_, stage) => isOpen[stage]);
            (SubsetStage Stage, int Depth, uint Kept)[] nodes =
            [
                .. workers.Length == 1 ? open.Select(stage => (stage, 0, stage.Kept)) : open.SelectMany(stage => stage.Split().Select(node => (stage, node.Depth, node.Kept))),
            ];
            InTurns(nodes.Length, (worker, node) => worker.Look(nodes[node].Stage, nodes[node].Depth, nodes[node].Kept));
        }
        while (best.IsUnsettled());

        Steps += workers.Sum(worker => worker.Steps);
        return best.Sure();

        // Each takes the next piece that is left, in their order, so that none waits for another.
        void InTurns(int pieces, Action<SubsetWorker, int> work)
        {
            var taken = -1;
            sideBySide(workers.Length, number =>
            {
                for (var piece = Interlocked.Increment(ref taken); piece < pieces; piece = Interlocked.Increment(ref taken))
                {
                    work(workers[number], piece);
                }
            });
        }
    }

    private List<SubsetStage> Stages((int Least, int Most) sizes)
    {
        var stages = new List<SubsetStage>();
        for (var size = sizes.Least; size <= sizes.Most; size++)
        {
            for (var part = 0; part < scores[0].Parts.Count; part++)
            {
                var (required, within, order) = scores[0].Parts[part];
                var (kept, possible) = (fixedIn | required, allowed & within);
                if ((kept & ~possible) == 0 && BitOperations.PopCount(kept) <= size && BitOperations.PopCount(possible) >= size)
                {
                    stages.Add(new SubsetStage(part, size, [.. order.Where(thing => ((possible & ~kept) >> thing & 1) != 0)], kept, possible));
                }
            }
        }

        return stages;
    }
}
