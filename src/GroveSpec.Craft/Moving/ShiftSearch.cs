using System.Collections.Immutable;
using GroveSpec.Craft.Stand;

namespace GroveSpec.Craft.Moving;

/// <summary>
/// Finds the shortest shifts of trunks after which nothing is amiss, or as little as was found; of hardly longer ones those of
/// fewer trunks.
/// </summary>
/// <remarks>
/// Six searches. Mending one thing after another, what costs least followed first. Several times over, putting trunks by turns
/// where each is best, longer where many stand and much is amiss at once. Where thickness goes against the order of depth, mending
/// and putting by turns from trunks that have passed each other.
/// Then each trunk alone, by whole steps, the nearest first and as far as that may be shorter than what was
/// found, so that what one trunk can mend is mended. Then the best of what was found is worn down: a trunk is put back, or
/// nearer to where it was, or two are shifted together, as long as no more is amiss than before; and where something is left,
/// mending goes on from there. And last trunks are left where
/// they were that the others can do without by hardly longer ways. Each has its measure of work and its own chance from a seed, so that the same stand
/// gives the same shifts whatever the machine and however many searches run at once.
/// </remarks>
public sealed class ShiftSearch
{
    private const long WorkOfRepairs = 200_000;
    private const long WorkOfRepairsOfTraded = 800_000;
    private const long WorkOfSweeps = 2_000_000;
    private const long WorkOfPolish = 400_000;
    private const long WorkOfFewer = 400_000;
    private const int Runs = 4;

    /// <summary>Of so many trunks and more, much may hang together: then searching longer is worth it, and so are longer ways for each finding.</summary>
    private const int Many = 9;

    /// <summary>What a finding is worth, in millimetres of way: among few the one and the other in turn, among many the first. Found by trial on groups of 6 to 12 trunks.</summary>
    private static readonly double[] Prices = [60, 40];

    private const int UsualTrunks = 12;
    private const int Polished = 2;
    private const ulong Seed = 20_261_126;

    private readonly Func<LooseStand> stand;
    private readonly IReadOnlyList<Movable> movables;
    private readonly double step;
    private readonly Action<int, Action<int>> sideBySide;
    private readonly CancellationToken cancellation;

    /// <summary>Makes a search.</summary>
    /// <param name="stand">Lays out the stand, all trunks where they are at first; each search that runs beside others has its own.</param>
    /// <param name="movables">The trunks that may be shifted.</param>
    /// <param name="step">The step in which single trunks are tried, in millimetres.</param>
    /// <param name="sideBySide">Does so many pieces of work, each told its number from 0, at once or one after another; each writes only its own result, so that their order is of no matter.</param>
    /// <param name="cancellation">Ends the search.</param>
    public ShiftSearch(Func<LooseStand> stand, IReadOnlyList<Movable> movables, double step, Action<int, Action<int>> sideBySide, CancellationToken cancellation) =>
        (this.stand, this.movables, this.step, this.sideBySide, this.cancellation) = (stand, movables, step, sideBySide, cancellation);

    /// <summary>Searches.</summary>
    /// <param name="effort">How many times the usual work is done, above zero.</param>
    /// <param name="triesEachAlone">Whether each trunk is tried alone too, at every place within reach, so that what one can mend is sure to be found.</param>
    /// <returns>The shifts; none where nothing is amiss, or nothing found makes it better.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public ShiftPlan Find(double effort, bool triesEachAlone)
    {
        var first = new ShiftState(movables.Count) { Weight = stand().Weigh(double.PositiveInfinity, out _) };
        var best = first.Weight > 0 && movables.Count > 0 ? Search(first, effort, triesEachAlone) : first;
        var shifts = ImmutableArray.CreateBuilder<(Movable, double, double)>();
        for (var place = 0; place < movables.Count; place++)
        {
            if (best.Rightward[place] != 0 || best.Backward[place] != 0)
            {
                shifts.Add((movables[place], best.Rightward[place], best.Backward[place]));
            }
        }

        return new(shifts.ToImmutable(), best.Weight, best.Distance);
    }

    private ShiftState Search(ShiftState first, double effort, bool triesEachAlone)
    {
        // What takes longer to look at may take longer, up to some seconds; what is looked at sooner is looked at more often.
        var part = movables.Count / (double)UsualTrunks;
        effort *= part >= 1 ? Math.Min(part * part, 8) : Math.Min(1.25 / part, 2.2);
        var traded = Traded();
        var found = new List<ShiftState>[Runs + 1 + traded.Count];
        sideBySide(found.Length, run => found[run] = Written(run switch
        {
            0 => new ShiftRepairs(Tries()).Find(first, (long)(WorkOfRepairs * effort)),
            <= Runs => [Sweeps(Tries(), run).Find(first, (long)(WorkOfSweeps * effort * Crowding(first)))],
            _ => Mended(traded[run - Runs - 1], effort / traded.Count),
        }));
        var kept = new List<ShiftState>();
        foreach (var state in found.SelectMany(states => states))
        {
            ShiftRepairs.Keep(kept, state);
        }

        if (triesEachAlone && Single(kept[0].Weight == 0 ? kept[0].Distance : double.PositiveInfinity) is { } single)
        {
            ShiftRepairs.Keep(kept, single);
        }

        ShiftState[] worn = [.. kept.Where(state => state.Weight == kept[0].Weight).Take(Polished)];
        sideBySide(worn.Length, run => worn[run] = Polish(Tries()).Shorten(worn[run], (long)(WorkOfPolish * effort)));
        var shortest = MendedFurther(worn.Aggregate((one, other) => other.IsBetterThan(one) ? other : one), effort);
        var again = Tries();
        return new FewerShifts(again, Polish(again), new SeededRandom(Seed)).Find(shortest, (long)(WorkOfFewer * effort));
    }

    /// <summary>The same states with ways that can be written.</summary>
    private List<ShiftState> Written(List<ShiftState> states)
    {
        var polish = Polish(Tries());
        return [.. states.Select(polish.Written)];
    }

    /// <summary>The shortest shift of a single trunk that mends all, each tried by itself; of equally short ones that of the first.</summary>
    private ShiftState? Single(double most)
    {
        var found = new ShiftState?[movables.Count];
        sideBySide(found.Length, place => found[place] = new SingleShifts(Tries(), step).Find(place, most));
        return found.Where(state => state is not null).MinBy(state => state!.Distance);
    }

    /// <summary>Mends what is left from where the trunks have come to, as long as that leaves less.</summary>
    private ShiftState MendedFurther(ShiftState state, double effort)
    {
        for (var isBetter = true; isBetter && state.Weight > 0;)
        {
            var tries = Tries();
            tries.Load(state);
            var polish = Polish(tries);
            var mended = polish.Shorten(polish.Written(new ShiftRepairs(tries).Find(state, (long)(WorkOfRepairs * effort))[0]), (long)(WorkOfRepairs * effort));
            isBetter = mended.Weight < state.Weight;
            state = isBetter ? mended : state;
        }

        return state;
    }

    /// <summary>How much longer to put many by turns by how much is amiss for each: many findings at once hang together, few do not.</summary>
    private double Crowding(ShiftState first) => movables.Count < Many ? 1 : Math.Clamp(first.Weight / movables.Count, 0.95, 2.5);

    /// <summary>Where thickness goes against the order of depth: stands in which it does not, what else is amiss in them unmended.</summary>
    private List<ShiftState> Traded()
    {
        var (loose, faults) = (stand(), new List<StandFault>());
        loose.Find(faults);
        return faults.Exists(fault => fault.Kind == StandFaultKind.DepthReversed && loose.WeightOf(fault) > 0) ? new DepthShifts(loose, movables).Find() : [];
    }

    private List<ShiftState> Mended(ShiftState state, double effort)
    {
        var tries = Tries();
        tries.Load(state);
        state.Weight = tries.Weigh();
        var kept = new ShiftRepairs(tries).Find(state, (long)(WorkOfRepairsOfTraded * effort));
        kept.Add(Sweeps(tries, 0).Find(state, (long)(WorkOfSweeps * effort)));
        return kept;
    }

    private ShiftSweeps Sweeps(ShiftTries tries, int run) => new(tries, new SeededRandom(Seed + (ulong)run), Prices[movables.Count < Many ? run % Prices.Length : 0]);

    private static ShiftPolish Polish(ShiftTries tries) => new(tries, new SeededRandom(Seed));

    private ShiftTries Tries() => new(stand(), movables, cancellation);
}
