using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Checks.Judging;
using GroveSpec.Model.States;

namespace GroveSpec.Checks;

/// <summary>Runs every check on a planting and keeps what a grower should hear.</summary>
public static class Checker
{
    /// <summary>From this many standing trunks on only the worst findings of a kind are told.</summary>
    public const int LargePlanting = 10;

    /// <summary>The composition of more standing trunks than this is not judged: it is no planting any more, and every pair of neighbours costs time.</summary>
    public const int MostTrunks = 20_000;

    /// <summary>How many findings of a kind are told of a large planting.</summary>
    public const int ToldOfAKind = 5;

    /// <summary>Checks a planting.</summary>
    /// <param name="context">The planting, its state on the day that is judged, and where its facts were written.</param>
    /// <param name="others">Findings made before, of the text and of what could not be bound; they are muted, accepted and ranked with the rest.</param>
    /// <param name="cancellation">Ends the work between two checks; a check that takes long ends as what it asks of the context does.</param>
    /// <returns>The findings that stand, ranked, and those that the file accepts.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static CheckReport Check(CheckContext context, ImmutableArray<Finding> others, CancellationToken cancellation = default)
    {
        var trunks = Standing(context.State);
        var (standing, accepted) = Judge(context, others, trunks, cancellation);
        Ranking.Sort(standing);
        Ranking.Sort(accepted);
        return new CheckReport(Ranking.Tell(standing, trunks >= LargePlanting ? ToldOfAKind : int.MaxValue), [.. accepted]);
    }

    /// <summary>All that stands of a planting's composition, told or not.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="cancellation">Ends the work between two checks.</param>
    /// <returns>The findings, in no particular order; what the file accepts or mutes is left out.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    internal static IEnumerable<Finding> Composition(CheckContext context, CancellationToken cancellation) =>
        Judge(context, [], Standing(context.State), cancellation).Standing.Where(finding => finding.Check.IsComposition);

    private static (List<Finding> Standing, List<Finding> Accepted) Judge(CheckContext context, ImmutableArray<Finding> others, int trunks, CancellationToken cancellation)
    {
        var limits = new Limits(context);
        var muted = context.Planting.Muted.Select(muted => muted.Check).ToHashSet(StringComparer.Ordinal);
        var found = new List<Finding>(others.IsDefault ? [] : others);
        found.AddRange(limits.Findings);
        foreach (var rule in OneFactOnce.InOrder(Catalogue.Rules))
        {
            cancellation.ThrowIfCancellationRequested();
            if (!IsMuted(rule.Description, muted) && (trunks <= MostTrunks || !rule.Description.IsComposition))
            {
                found.AddRange(Look(rule, context, limits.For(rule.Description)));
            }
        }

        found.RemoveAll(finding => IsMuted(finding.Check, muted));
        var acceptances = new Acceptances(context);
        var (standing, accepted) = acceptances.Divide(found);
        if (trunks <= MostTrunks)
        {
            standing.AddRange(acceptances.Stale(muted).Where(finding => !IsMuted(finding.Check, muted)));
        }
        else
        {
            standing.Add(TooMany(context, trunks));
        }

        return (standing, accepted);
    }

    /// <summary>Whether a planting is small enough to be judged, and so to be drawn: at most <see cref="MostTrunks"/> trunks stand in it.</summary>
    /// <param name="state">Its state on the day.</param>
    /// <returns>True when it is.</returns>
    public static bool IsJudged(PlantingState state) => Standing(state) <= MostTrunks;

    /// <summary>The limit of a check that holds for a planting.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="check">The check's name.</param>
    /// <returns>The limit that the file sets, or the usual one, in the unit of the check's description; 0 for a check without one.</returns>
    public static double LimitOf(CheckContext context, string check) => Catalogue.Find(check) is { } description ? new Limits(context).For(description) : 0;

    private static int Standing(PlantingState state) => state.Trunks.Count(trunk => trunk.Presence == Presence.Standing);

    /// <summary>A check of the file that can fail a run is no matter of taste and stays on.</summary>
    private static bool IsMuted(CheckDescription check, HashSet<string> muted) =>
        (check.IsComposition || check.Severity != Severity.Error) && muted.Contains(check.Name);

    private static Finding TooMany(CheckContext context, int trunks) => new()
    {
        Check = FileDescriptions.TooLarge,
        Severity = FileDescriptions.TooLarge.Severity,
        Place = context.Origins.Locate(context.State.Trunks.Where(trunk => trunk.Presence == Presence.Standing).ElementAt(MostTrunks).Trunk.Origin),
        Message = string.Create(CultureInfo.InvariantCulture, $"{trunks:N0} trunks stand here, and the composition of no more than {MostTrunks:N0} is judged. The file was read, but nothing is told of how they stand together, and nothing is drawn. Split it into several plantings."),
        Measured = trunks,
        Limit = MostTrunks,
    };

    private static ImmutableArray<Finding> Look(IRule rule, CheckContext context, double limit)
    {
#pragma warning disable CA1031 // One fault in one check is one message; the others still run.
        try
        {
            return [.. rule.Look(context, limit)];
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            return
            [
                new Finding
                {
                    Check = FileChecks.BrokenCheck,
                    Severity = FileChecks.BrokenCheck.Severity,
                    Place = context.Origins.Locate(Model.Origin.Default),
                    Message = $"The check {rule.Description.Name} could not be carried out ({fault.GetType().Name}); all others were. This is a fault of GroveSpec, not of the planting.",
                },
            ];
        }
#pragma warning restore CA1031
    }
}
