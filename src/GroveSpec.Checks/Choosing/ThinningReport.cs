using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Choosing;

/// <summary>Tells what a choice comes to: it runs the checks on what would stand, and says why in a sentence.</summary>
internal sealed class ThinningReport
{
    private readonly CheckContext context;
    private readonly CheckContext open;
    private readonly ThinningScore score;

    /// <summary>Looks at all that stands now.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="open">The planting without what goes in any case.</param>
    /// <param name="score">The score of choices among what is left.</param>
    public ThinningReport(CheckContext context, CheckContext open, ThinningScore score)
    {
        (this.context, this.open, this.score) = (context, open, score);
        var isSame = open.Standing.Count == context.Standing.Count;
        Now = Stand(ThinnedContext.Of(context, _ => false), isSame ? score : new ThinningScore(context), uint.MaxValue >> (32 - context.Standing.Count));
    }

    /// <summary>All that stands now.</summary>
    public ThinnedStand Now { get; }

    /// <summary>A suggestion.</summary>
    /// <param name="kept">The trunks that stay, of those that have a place.</param>
    /// <param name="near">Choices that are nearly as good.</param>
    /// <returns>The suggestion.</returns>
    public ThinningSuggestion Tell(uint kept, IEnumerable<(uint Kept, double Score)> near)
    {
        var stand = Stand(ThinnedContext.Of(open, kept), score, kept);
        return new(stand, ThinningWords.Why(stand, Now, context.Units), [.. near.Select(one => new ThinningVariant(First(one.Kept & ~kept), First(kept & ~one.Kept), one.Score))]);
    }

    private string? First(uint set) => set == 0 ? null : open.Standing.Trunks[System.Numerics.BitOperations.TrailingZeroCount(set)].Name;

    private ThinnedStand Stand(CheckContext thinned, ThinningScore score, uint kept)
    {
        var standing = thinned.Standing;
        var report = Checker.Check(thinned, []);
        var stays = thinned.State.Trunks.Where(trunk => trunk.Presence == Presence.Standing).ToList();
        var diameters = stays.Where(trunk => trunk.Diameter is not null).Select(trunk => trunk.Diameter!.Value.Value).Order().ToList();
        var gaps = standing.NeighbourPairs.Select(pair => standing.Trunks[pair.First].Place!.Value.DistanceTo(standing.Trunks[pair.Second].Place!.Value)).Order().ToList();
        var parts = new ThinningScoreParts(
            0, score.Aims.Loss(kept), ThinningScore.OfEvenness(score.GapEvenness(kept)), ThinningScore.OfEvenness(score.Measures.SizeEvenness(kept)), ThinningScore.SoftWeight * score.Measures.Imbalance(kept));
        var names = stays.Select(trunk => trunk.Name).ToHashSet(StringComparer.Ordinal);
        return new ThinnedStand
        {
            State = thinned.State,
            Kept = [.. names.Order(StringComparer.Ordinal)],
            TakenOut = [.. context.State.Trunks.Where(trunk => trunk.Presence == Presence.Standing && !names.Contains(trunk.Name)).Select(trunk => trunk.Name).Order(StringComparer.Ordinal)],
            Parts = parts with { Findings = Halves(score.Of(kept, double.PositiveInfinity) - parts.Score) },
            Findings = [.. report.Findings.Where(finding => finding.Check.IsComposition)],
            Main = Main(standing, score, kept),
            LostRoles = [.. LostRoles(stays)],
            Gaps = gaps.Count == 0 ? null : (gaps[0], gaps[^1]),
            Diameters = diameters.Count == 0 ? null : (diameters[0], diameters[^1]),
            Middle = score.Measures.Middle,
            Lopsided = Lopsided(score, kept),
        };
    }

    private string? Main(StandingTrunks standing, ThinningScore score, uint kept)
    {
        var all = ReferenceEquals(score, this.score) ? open.Standing : context.Standing;
        return Rules.CentredMain.LargestFirst(standing.Trunks.Where(trunk => ((score.Aims.Main & kept) >> all.Trunks.IndexOf(trunk) & 1) != 0))
            .FirstOrDefault()?.Name;
    }

    private IEnumerable<string> LostRoles(List<TrunkState> stays)
    {
        var played = stays.Select(trunk => trunk.Trunk.Role?.Value).ToHashSet(StringComparer.Ordinal);
        return context.State.Trunks
            .Where(trunk => trunk.Presence == Presence.Standing)
            .Select(trunk => context.Planting.RoleOf(trunk.Trunk)?.Name)
            .OfType<string>()
            .Where(role => !played.Contains(role))
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);
    }

    /// <summary>Findings weigh halves, and what rounding left is no part of them.</summary>
    private static double Halves(double weight) => Math.Round(weight * 2) / 2;

    private static (Length Distance, Bearing Toward) Lopsided(ThinningScore score, uint kept)
    {
        var (from, to) = (score.Measures.Middle, score.Measures.CentreOfWood(kept));
        var degrees = Math.Atan2((to.X - from.X).Millimetres, (to.Y - from.Y).Millimetres) * 180 / Math.PI;
        return (from.DistanceTo(to), new Bearing(degrees));
    }
}
