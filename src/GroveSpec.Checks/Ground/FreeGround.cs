using GroveSpec.Checks.Moving;
using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>
/// Finds where one more trunk raises no finding that is not there without it, and the best spots there. docs/ground.md tells
/// what is measured.
/// </summary>
public static class FreeGround
{
    /// <summary>How many trunks may stand, the newcomer included.</summary>
    public const int MostTrunks = GroundStand.MostTrunks;

    /// <summary>How many spots are told at most.</summary>
    public const int MostSpots = 3;

    private const double PlacesLookedAt = 40_000;
    private const double PlacesLookedAtInAHeap = 1_000;
    private const double PlacesAcross = 600;

    /// <summary>Finds the free ground and its best spots.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">The trunk.</param>
    /// <param name="sideBySide">
    /// Does so many pieces of work, each told its number from 0, at once or one after another; null for one after another. The
    /// ground is the same either way.
    /// </param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The answer, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static GroundAnswer Find(CheckContext context, GroundWish wish, Action<int, Action<int>>? sideBySide = null, CancellationToken cancellation = default)
    {
        var answer = FindOutline(context, wish, sideBySide, out var search, cancellation);
        return search is null ? answer : search.Complete(answer, cancellation);
    }

    /// <summary>Finds the free ground alone, as it is shown while a trunk is moved.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">The trunk.</param>
    /// <param name="sideBySide">As in <see cref="Find"/>.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The answer without spots, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static GroundAnswer FindOutline(CheckContext context, GroundWish wish, Action<int, Action<int>>? sideBySide = null, CancellationToken cancellation = default) =>
        FindOutline(context, wish, sideBySide, out _, cancellation);

    private static GroundAnswer FindOutline(CheckContext context, GroundWish wish, Action<int, Action<int>>? sideBySide, out SpotSearch? search, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(wish);
        search = null;
        if (GroundObstacle.Of(context, wish) is { } obstacle)
        {
            return new GroundAnswer { Obstacle = obstacle, IsMisasked = GroundObstacle.IsMisasked(context, wish) };
        }

        var newcomer = Newcomer.Of(context, wish);
        var ground = new GroundCase(context, newcomer);
        var bounds = new GroundBounds(ground);
        var inParts = sideBySide ?? SideBySide.OneAfterAnother;
        var first = new GroundJudge(ground);
        var judges = SideBySide.OneEach(first, first.Another, sideBySide);
        var takers = new GroundTakers();
        GroundTest[] tests = [.. judges.Select(judge => new GroundTest(judge, bounds, takers))];
        var step = StepFor(bounds, context.Units, judges[0].IsSlow ? PlacesLookedAtInAHeap : PlacesLookedAt);
        var lattice = GroundLattice.Of(bounds.Least, bounds.Greatest, step, tests, inParts, cancellation);
        var outline = GroundOutline.Of(lattice, tests, inParts, cancellation);
        search = new SpotSearch(context, ground, bounds, judges, tests[0], lattice, inParts);
        return new GroundAnswer
        {
            Trunk = newcomer,
            IsOneMore = wish.Of is null,
            Without = ground.Without.State,
            Outline = outline,
            FreeArea = GroundOutline.AreaInSquareMillimetres(outline),
            WholeArea = ground.Without.Outline?.AreaInSquareMillimetres,
            Reach = bounds.Reach,
            Step = step,
            LineLimit = Checker.LimitOf(context, "three-in-line"),
            Notes = [.. GroundNotes.Of(context, wish, ground)],
        };
    }

    /// <summary>Whole hand's steps, so many that the places are no more than can be looked at in a moment.</summary>
    private static Length StepFor(GroundBounds bounds, UnitSystem units, double places)
    {
        double width = (bounds.Greatest.X - bounds.Least.X).Millimetres, height = (bounds.Greatest.Y - bounds.Least.Y).Millimetres;
        var step = HandStep.Of(units);
        var wanted = Math.Max(Math.Sqrt(width * height / places), Math.Max(width, height) / PlacesAcross) / step.Millimetres;
        return new Length(step.Nanometres * Math.Max(1, (long)Math.Ceiling(wanted)));
    }
}
