using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;

namespace GroveSpec.Checks.Rules;

/// <summary>A sacrifice branch that no task takes off.</summary>
internal sealed class SacrificeKept : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "sacrifice-kept",
        Severity = Severity.Warning,
        Meaning = "A sacrifice branch is left to grow, and no task takes it off.",
        Explanation = "Forgotten, a sacrifice branch takes over: the trunk thickens where it should not, the top above it weakens, and the scar grows with every year. It comes off when the trunk has what it needs, usually while the tree rests, in late winter; from a tree without a rest in the month behind.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        foreach (var work in context.Work)
        {
            if (work.Kind == TaskKind.Sacrifice && Sacrifices.RemovalOf(work.Dated.Task, context.Planting.Tasks) is null)
            {
                var removal = Removal(context, work);
                var advice = removal is null ? "Say until when it grows, and add a task that takes it off." : $"Add a task that takes it off {removal}.";
                var finding = WorkDraft.Of(context, Description, work, $"{WorkDraft.Name(work)} lets a branch grow on {WorkDraft.Trunks(work)}, and nothing takes it off. {advice}", work.Dated.Task.Origin);
                yield return finding with { Remedies = [.. Remedies(context, work, removal), .. finding.Remedies] };
            }
        }
    }

    private static ImmutableArray<Remedy> Remedies(CheckContext context, Work work, string? removal)
    {
        if (removal is null)
        {
            return [];
        }

        var name = work.Dated.Task.Name;
        var own = FreeName.Of(context, name + "-off");
        return [new Remedy($"add a task that takes it off {removal}", [context.Origins.WriteBehind(work.Dated.Task.Origin, $"task {own} remove-sacrifice of {name} {removal}")])];
    }

    /// <summary>When it comes off, as a file says it; null while it is not known how long it grows.</summary>
    private static string? Removal(CheckContext context, Work work)
    {
        if (work.Dated.Window is not { Latest: { } last })
        {
            return null;
        }

        // Stages are asked of the year in which it ends: a tree that rests in any of them rests.
        var rests = work.Kinds.Any(kind => kind.Year.Has(Stage.Dormant));
        return Sacrifices.RemovalAfter(last, rests, context.Planting.Site?.IsSouthern ?? false) switch
        {
            Moment.SeasonOfYear season => string.Create(CultureInfo.InvariantCulture, $"in late winter {season.Number}"),
            Moment.Month month => string.Create(CultureInfo.InvariantCulture, $"in {month.Value.Year:0000}-{month.Value.Month:00}"),
            _ => null,
        };
    }
}
