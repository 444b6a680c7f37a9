using System.Collections.Immutable;
using GroveSpec.Checks.Judging;
using GroveSpec.Checks.Moving;
using GroveSpec.Craft.Moving;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Checks.Nudging;

/// <summary>Finds the smallest moves that clear what the checks of composition find.</summary>
public static class Nudging
{
    /// <summary>What is free for the search is free for the checks, whatever was rounded.</summary>
    private const double Margin = 1e-6;

    /// <summary>Moves that leave only sizes alike are told besides when they are shorter than this share of the others.</summary>
    private const double MuchShorter = 0.7;

    private const double PartOfTheSecond = 0.2;

    /// <summary>Finds the moves. What is suggested was looked at by the checks themselves.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="tree">The tree of its file, into which nothing is written where it could not be read.</param>
    /// <param name="wish">How far trunks may be nudged.</param>
    /// <param name="sideBySide">As the other takes it.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The moves, or why there are none.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static NudgeAnswer Find(CheckContext context, SyntaxTree tree, NudgeWish wish, Action<int, Action<int>>? sideBySide = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return Find(context, wish with { Torn = TornStatements.Of(context, tree) }, 1, sideBySide, cancellation);
    }

    /// <summary>Searches, whatever could not be read.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">How far trunks may be nudged.</param>
    /// <param name="effort">How many times the usual work is done, above zero.</param>
    /// <param name="sideBySide">
    /// Does so many pieces of work, each told its number from 0, at once or one after another; null for one after another. The
    /// moves are the same either way.
    /// </param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The moves, or why there are none.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static NudgeAnswer Find(CheckContext context, NudgeWish wish, double effort = 1, Action<int, Action<int>>? sideBySide = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(wish);
        var search = new Search(wish, sideBySide ?? Checks.SideBySide.OneAfterAnother, cancellation);
        var remarks = ImmutableArray.CreateBuilder<string>();
        var fresh = new CheckContext(context.Planting, context.State, context.Origins, context.Units);
        var now = Composition(fresh);
        var movables = NudgeMovables.Of(context, now, wish, remarks);
        if (Obstacle(context, now, movables) is { } obstacle)
        {
            return new NudgeAnswer { Obstacle = obstacle, Now = now, Remarks = remarks.ToImmutable() };
        }

        var hasSizes = now.Any(finding => finding.Check.Name is "twin-diameters" or "twin-heights");
        var whole = Suggest(context, now, movables, search, withSizes: true, effort);
        var suggestions = ImmutableArray.CreateBuilder<NudgeSuggestion>();
        if (whole is not null)
        {
            suggestions.Add(whole);
        }

        if (hasSizes && Suggest(context, now, movables, search, withSizes: false, effort * PartOfTheSecond) is { } place
            && (whole is null || (place.Distance.Millimetres < whole.Distance.Millimetres * MuchShorter && place.Left.All(IsOfSizes))))
        {
            suggestions.Add(place);
        }

        remarks.AddRange(suggestions.SelectMany(suggestion => Planned(context, suggestion)).Distinct());
        if (ReadByTape(context, suggestions) is { Count: > 0 } read)
        {
            remarks.Add($"Tapes were read to {Wording.List(Wording.Sorted(read), 12)}: once {(read.Count == 1 ? "it is" : "they are")} moved those readings fit no more, so read them anew or take them out.");
        }

        if (now.Where(IsOutOfReach).Select(finding => finding.Check.Name).Distinct(StringComparer.Ordinal).ToList() is { Count: > 0 } others)
        {
            remarks.Add($"No move can mend {Wording.List(others)}.");
        }

        return new NudgeAnswer
        {
            Now = now,
            Remarks = remarks.ToImmutable(),
            Suggestions = suggestions.ToImmutable(),
            Obstacle = suggestions.Count == 0 ? NothingFound(context, wish) : null,
        };
    }

    /// <summary>What is said of planned trunks that one which is moved would touch.</summary>
    private static IEnumerable<string> Planned(CheckContext context, NudgeSuggestion suggestion) => suggestion.Moves
        .Where(move => move.IsMoved)
        .SelectMany(move => Moving.PlannedTrunks.Touched(context.State, suggestion.State.Trunks.First(trunk => trunk.Name == move.Name), move.Place)
            .Select(planned => Moving.PlannedTrunks.Say($"Moved so, {Wording.Name(move.Name)}", move.Place, planned, context.Units)));

    /// <summary>The trunks with tape readings that are moved.</summary>
    private static List<string> ReadByTape(CheckContext context, IReadOnlyCollection<NudgeSuggestion> suggestions) =>
    [
        .. suggestions.SelectMany(suggestion => suggestion.Moves).Where(move => move.IsMoved).Select(move => move.Name).Distinct(StringComparer.Ordinal)
            .Where(name => context.Planting.Tapes.Any(tape => tape.From == name || tape.To == name)),
    ];

    private static ImmutableArray<Finding> Composition(CheckContext context) => [.. Checker.Check(context, []).Findings.Where(finding => finding.Check.IsComposition)];

    private static string NothingFound(CheckContext context, NudgeWish wish) => context.Planting.EffectiveHabit == Habit.Group
        ? $"No moves of up to {LengthWording.Say(wish.Reach, context.Units)} were found that leave less than there is now. Let the trunks go further, take one out, or let the findings stand with a reason."
        : $"No bends of up to {LengthWording.Say(wish.Bend.Degrees, 1)} deg were found that leave less than there is now: feet that are grown together cannot be moved, and most of what the checks look at is where the feet are. Take a trunk out, turn the planting, or let the findings stand with a reason.";

    private static string? Obstacle(CheckContext context, ImmutableArray<Finding> now, List<Movable> movables)
    {
        if (context.Standing.Count == 0)
        {
            return "No trunk whose place is known stands here, so there is none to move.";
        }

        if (context.Standing.Count > LooseStand.MostTrunks)
        {
            return $"{context.Standing.Count} trunks stand here, and moves are looked for among up to {LooseStand.MostTrunks}. Part the planting into several files, or leave out what stands far from the findings.";
        }

        if (now.All(IsOutOfReach))
        {
            return now.IsEmpty ? "The checks of composition find nothing here, so nothing has to be moved." : $"What the checks of composition find here ({Wording.List([.. now.Select(finding => finding.Check.Name).Distinct(StringComparer.Ordinal)])}) no move can mend.";
        }

        return movables.Count == 0 ? "No trunk here may be moved or bent." : null;
    }

    /// <summary>Whether a finding is about how many trunks there are, or about the sizes of one against another.</summary>
    private static bool IsOutOfReach(Finding finding) => finding.Check.Name is "even-count" or "wide-but-short" or "thin-but-tall";

    private static bool IsOfSizes(Finding finding) => finding.Check.Name is "twin-diameters" or "twin-heights" || IsOutOfReach(finding);

    private static NudgeSuggestion? Suggest(CheckContext context, ImmutableArray<Finding> now, List<Movable> movables, Search search, bool withSizes, double effort)
    {
        var limits = NudgeLimits.Of(context, Margin, withSizes);

        // Searches that run side by side only read what is worked out by now.
        _ = (context.Outline, context.Standing);
        var plan = new ShiftSearch(() => Stand(context, limits), movables, Math.Max(Moving.HandStep.Of(context.Units).Millimetres, search.Wish.Step.Millimetres), search.SideBySide, search.Cancellation).Find(effort, withSizes);
        if (plan.Shifts.IsEmpty)
        {
            return null;
        }

        var nudged = new NudgedPlanting(context, plan);
        var left = Composition(nudged.Context);
        var before = now.Sum(finding => (1 + finding.Untold) * Choosing.ChoiceCheck.WeightOf(finding.Severity));
        var after = left.Sum(finding => (1 + finding.Untold) * Choosing.ChoiceCheck.WeightOf(finding.Severity));
        if (after >= before)
        {
            return null;
        }

        var suggestion = new NudgeSuggestion
        {
            Moves = nudged.Moves,
            Distance = Length.FromMillimetres(nudged.Moves.Sum(move => move.Distance.Millimetres)),
            State = nudged.State,
            Left = left,
            Why = "",
            Edits = nudged.Edits,
        };
        return suggestion with { Why = NudgeWords.Why(suggestion, now, context.Units) };
    }

    /// <summary>The planting as a loose stand.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="limits">What counts.</param>
    /// <returns>The stand.</returns>
    internal static LooseStand Stand(CheckContext context, StandFaultLimits limits)
    {
        var largest = Rules.CentredMain.LargestFirst(context.Standing.Trunks).FirstOrDefault() is { } trunk ? context.Standing.Trunks.IndexOf(trunk) : -1;
        return new(context.Standing, NameOrder.Of(context.State), context.Outline, largest, context.Planting.EffectiveHabit == Habit.Clump, limits);
    }

    private sealed record Search(NudgeWish Wish, Action<int, Action<int>> SideBySide, CancellationToken Cancellation);
}
