using System.Collections.Immutable;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using NodaTime;

namespace GroveSpec.Checks.Rules;

/// <summary>Two pieces of heavy work on one trunk without time to recover between them.</summary>
internal sealed class TooMuchAtOnce : IRule
{
    // One work among hundreds that crowd it has been told of often enough.
    private const int MostOfOne = 8;

    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "too-much-at-once",
        Severity = Severity.Warning,
        Meaning = "Two pieces of heavy work on a trunk follow each other without time to recover.",
        Explanation = "A tree lives on what it has stored until new roots or leaves feed it again. Left between: 120 days after work on the roots before leaves are taken, 180 before the roots are worked on again, 56 before a trunk is wired or grafted; 56 days after leaves are taken before work on the roots, 70 before they are taken again; 42 between leaves taken and a pruning; 56 about a graft. Half as many again for slow species, and for a trunk that its role holds back. Pruning that comes again and again is upkeep and does not count, nor does pruning beside work on the roots. It is told only where no choice of days within what is planned leaves enough.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var heavy = context.Work.Where(Recovery.IsHeavy)
            .SelectMany(work => work.AllDays.Select(days => (Work: work, Days: days)))
            .OrderBy(one => one.Days.Start).ThenBy(one => one.Work.Dated.Task.Name, StringComparer.Ordinal).ToList();
        var told = new HashSet<(string, string)>();
        for (var first = 0; first < heavy.Count; first++)
        {
            var (work, days) = heavy[first];
            var (until, left) = (days.Start.PlusDays(Recovery.Longest), MostOfOne);
            for (var second = first + 1; second < heavy.Count && left > 0 && heavy[second].Days.Start <= until; second++)
            {
                var (other, otherDays) = heavy[second];

                // What was done long ago and cannot be undone is not told; what is still to come beside it is.
                if (Recovery.Missing(work, days, other, otherDays) is { } missing
                    && !(IsDone(work, days) && IsDone(other, otherDays)) && work.SharesTrunkWith(other)
                    && told.Add((work.Dated.Task.Name, other.Dated.Task.Name)))
                {
                    left--;
                    yield return Told(context, missing);
                }
            }
        }
    }

    private static bool IsDone(Work work, DateInterval days) => !work.ToCome.Contains(days);

    private Finding Told(CheckContext context, Recovery missing)
    {
        var (first, second) = (missing.First, missing.Second);
        var shared = second.Trunks.Where(first.Trunks.Contains).Order(StringComparer.Ordinal).ToList();
        var trunks = first.IsOfAll && second.IsOfAll ? "all trunks" : Wording.List(shared);
        var gap = missing.MostDaysBetween == 0 ? "on the same day as" : $"at most {DayWording.Count(missing.MostDaysBetween)} after";
        ImmutableArray<string> about = first.IsOfAll && second.IsOfAll ? [] : [.. shared];
        return WorkDraft.Of(context, Description, second, $"{WorkDraft.Name(second)} on {trunks} comes {gap} {WorkDraft.Name(first)}, and a tree needs {missing.DaysNeeded} days between the two to recover. Move one of them.") with
        {
            Trunks = about,
            Remedies = Acceptance.Offer(context, Description, about),
            Measured = missing.MostDaysBetween,
            Limit = missing.DaysNeeded,
            Unit = "days",
            Weight = missing.DaysNeeded - missing.MostDaysBetween,
            Related = [new RelatedPlace(context.Origins.Locate(first.Dated.Task.Origin), Wording.Name(first.Dated.Task.Name))],
        };
    }
}
