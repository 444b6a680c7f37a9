using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Checks.Rules;

/// <summary>A cut that wakes buds with no time left to harden before the frost.</summary>
internal sealed class LateCut : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "late-cut",
        Severity = Severity.Warning,
        Meaning = "A cut wakes buds that have no time to harden before the frost.",
        Explanation = "Cutting branches or taking leaves in late summer and autumn makes many trees shoot once more, and the frost kills what is still soft. A shoot is given as long as the species takes in spring from bud-break to harden-off. Pinching counts where a species shoots again and again; species that shoot once a year, and conifers of which nothing else is known, are left out. Once the leaves fall, or an evergreen rests, a cut wakes nothing before spring.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        foreach (var work in context.Work)
        {
            LateGrowth? worst = null;
            foreach (var kind in work.Kinds.Where(kind => LateGrowth.Wakes(work.Kind, kind)))
            {
                foreach (var days in work.ToCome)
                {
                    worst = LateGrowth.Of(kind, days) is { } late && (worst is null || late.DaysLeft - late.DaysNeeded < worst.DaysLeft - worst.DaysNeeded) ? late : worst;
                }
            }

            if (worst is not null)
            {
                yield return Told(context, work, worst);
            }
        }
    }

    private Finding Told(CheckContext context, Work work, LateGrowth late)
    {
        var left = late.DaysLeft switch
        {
            > 0 => $"may come as late as {DayWording.Count(late.DaysLeft)} before the usual first frost, {DayWording.Say(late.FirstFrost)}",
            0 => $"may come as late as the usual first frost, {DayWording.Say(late.FirstFrost)}",
            _ => $"may come as late as {DayWording.Count(-late.DaysLeft)} after the usual first frost, {DayWording.Say(late.FirstFrost)}",
        };
        // Only branches can be cut once nothing grows; tips and leaves are gone or hard by then.
        var wait = work.Kind == TaskKind.Prune ? $", or wait until about {DayWording.Say(late.SafeAgain)}, when a cut wakes nothing more" : "";
        return WorkDraft.Of(context, Description, work, $"{WorkDraft.Name(work)} on {WorkDraft.Trunks(work)} {left}, and a new shoot of {late.Kind.Said} needs about {late.DaysNeeded} to harden. Be done by {DayWording.Say(late.LastSafeDay)}{wait}.") with
        {
            Measured = late.DaysLeft,
            Limit = late.DaysNeeded,
            Unit = "days",
            Weight = late.DaysNeeded - late.DaysLeft,
        };
    }
}
