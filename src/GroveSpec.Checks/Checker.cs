using System.Collections.Immutable;
using GroveSpec.Checks.Judging;
using GroveSpec.Model.States;

namespace GroveSpec.Checks;

/// <summary>Runs every check on a planting and keeps what a grower should hear.</summary>
public static class Checker
{
    /// <summary>From this many standing trunks on only the worst findings of a kind are told.</summary>
    public const int LargePlanting = 10;

    /// <summary>How many findings of a kind are told of a large planting.</summary>
    public const int ToldOfAKind = 5;

    /// <summary>Checks a planting.</summary>
    /// <param name="context">The planting, its state on the day that is judged, and where its facts were written.</param>
    /// <param name="others">Findings made before, of the text and of what could not be bound; they are muted, accepted and ranked with the rest.</param>
    /// <returns>The findings that stand, ranked, and those that the file accepts.</returns>
    public static CheckReport Check(CheckContext context, ImmutableArray<Finding> others)
    {
        var limits = new Limits(context);
        var found = new List<Finding>(others.IsDefault ? [] : others);
        found.AddRange(limits.Findings);
        foreach (var rule in Catalogue.Rules)
        {
            found.AddRange(Look(rule, context, limits.For(rule.Description)));
        }

        found.RemoveAll(finding => IsMuted(finding.Check, context));
        found = OneFactOnce.Keep(found);
        var acceptances = new Acceptances(context);
        var (standing, accepted) = acceptances.Divide(found);
        standing.AddRange(acceptances.Stale().Where(finding => !IsMuted(finding.Check, context)));

        Ranking.Sort(standing);
        Ranking.Sort(accepted);
        var isLarge = context.State.Trunks.Count(trunk => trunk.Presence == Presence.Standing) >= LargePlanting;
        return new CheckReport(Ranking.Tell(standing, isLarge ? ToldOfAKind : int.MaxValue), [.. accepted]);
    }

    /// <summary>A check of the file that can fail a run is no matter of taste and stays on.</summary>
    private static bool IsMuted(CheckDescription check, CheckContext context) =>
        (check.IsComposition || check.Severity != Severity.Error) && context.Planting.Muted.Any(muted => muted.Check == check.Name);

    private static ImmutableArray<Finding> Look(IRule rule, CheckContext context, double limit)
    {
        if (IsMuted(rule.Description, context))
        {
            return [];
        }

#pragma warning disable CA1031 // One fault in one check is one message; the others still run.
        try
        {
            return [.. rule.Look(context, limit)];
        }
        catch (Exception fault)
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
