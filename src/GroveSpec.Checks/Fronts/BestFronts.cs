using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Views;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Checks.Fronts;

/// <summary>Finds the bearings from which a planting is best seen.</summary>
public static class BestFronts
{
    /// <summary>In plantings of more trunks than these no front is looked for: the bearings that matter grow faster than the square of their number.</summary>
    public const int MostTrunks = 60;

    /// <summary>How many suggestions are made at most.</summary>
    public const int MostSuggestions = 3;

    /// <summary>Two suggestions are at least so far apart, in degrees, and neither lies where the other holds.</summary>
    public const double LeastApart = 15;

    /// <summary>How many times in a degree the score all round is told.</summary>
    public const int ToldInADegree = 2;

    /// <summary>
    /// Finds the best front; then the best of those that are another one; then the best that is neither. Each is the best at any
    /// hundredth of a degree: no such bearing that counts scores less.
    /// </summary>
    /// <param name="context">The planting.</param>
    /// <param name="tree">The tree of its file.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The suggestions, or why there are none.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static FrontsAnswer Find(CheckContext context, SyntaxTree tree, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(tree);
        ImmutableArray<string> unplaced = [.. context.State.Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: null }).Select(trunk => trunk.Name).Order(StringComparer.Ordinal)];
        if (Obstacle(context, unplaced) is { } obstacle)
        {
            return new FrontsAnswer { Obstacle = obstacle, WithoutPlace = unplaced };
        }

        var score = new FrontScore(context);
        var round = new FrontRound(score, cancellation);
        var now = Look(context, round, context.Planting.Viewed?.From ?? Bearing.Front);
        var fronts = new List<Front>();
        while (fronts.Count < MostSuggestions && round.Best(IsOther, now.From, cancellation) is { } step)
        {
            fronts.Add(Look(context, round, FrontScore.BearingOf(step)));
        }

        return new FrontsAnswer
        {
            Now = now,
            NowHolds = FrontSentences.Holds(now),
            Suggestions = [.. fronts.Select(front => Suggest(context, tree, front, now))],
            Round = [.. Enumerable.Range(0, 360 * ToldInADegree).Select(place => round.At(place * FrontScore.StepsOfADegree / ToldInADegree))],
            Ranges = round.Ranges,
            WithoutPlace = unplaced,
        };

        bool IsOther(int step)
        {
            foreach (var front in fronts)
            {
                var from = FrontScore.BearingOf(step);
                if (FrontRound.Apart(from, front.From) < LeastApart || front.Span.Holds(from))
                {
                    return false;
                }
            }

            return true;
        }
    }

    private static FrontSuggestion Suggest(CheckContext context, SyntaxTree tree, Front front, Front now)
    {
        var turned = Turned(context, front.From);
        return new(front, FrontSentences.Why(front, now, turned), FrontSentences.Holds(front), FrontEdits.Of(context, tree, front.From)) { Named = FrontSentences.Named(front, turned) };
    }

    /// <summary>A planting as it would be if the viewer stood elsewhere.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="from">The bearing.</param>
    /// <returns>The planting on the same day, to be looked at afresh; all else of its view is as written.</returns>
    public static CheckContext Turned(CheckContext context, Bearing from)
    {
        ArgumentNullException.ThrowIfNull(context);
        var planting = context.Planting with { Viewed = (context.Planting.Viewed ?? new Viewpoint { Origin = Origin.Default }) with { From = from } };
        return new CheckContext(planting, context.State with { Planting = planting }, context.Origins, context.Units);
    }

    private static Front Look(CheckContext context, FrontRound round, Bearing from)
    {
        var parts = round.Of(from);
        return new Front
        {
            From = from,
            Parts = parts,
            Span = round.Span(from, parts.Findings),
            Findings = [.. Checker.Check(Turned(context, from), []).Findings.Where(finding => FrontFindings.Names.Contains(finding.Check.Name))],
        };
    }

    private static string? Obstacle(CheckContext context, ImmutableArray<string> unplaced)
    {
        var count = context.Standing.Count;
        return (count, unplaced.Length) switch
        {
            (0, 0) => "No trunk stands here, so there is no front to look for.",
            (0, _) => $"No trunk that stands has a place ({Wording.List(unplaced)}), so nothing is known of how they are seen. Measure them with a tape, or write where they stand.",
            (1, _) => $"{Wording.Name(context.Standing.Trunks[0].Name)} is the only trunk whose place is known, and alone it looks the same to the checks from all sides: choose its front by its bark and its bends.",
            ( > MostTrunks, _) => $"{count} trunks stand here, and a front is looked for in plantings of up to {MostTrunks}. Put those that make the picture into a file of their own, and ask for its front.",
            _ => null,
        };
    }
}
