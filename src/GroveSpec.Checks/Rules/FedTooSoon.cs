using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Checks.Rules;

/// <summary>Fertiliser on freshly cut roots.</summary>
internal sealed class FedTooSoon : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "fed-too-soon",
        Severity = Severity.Hint,
        Limit = new(28, ToleranceUnit.Days, 0, 180),
        Meaning = "A tree is fed too soon after work on its roots.",
        Explanation = "Cut roots take up little, and fertiliser can burn them; new ones are there after about four weeks of growth. It is told only where no choice of days within what is planned leaves enough. How much to give is said on the product's label.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var roots = context.Work.Where(work => Recovery.IsOfRoots(work.Kind)).OrderBy(work => work.Dated.Task.Name, StringComparer.Ordinal)
            .SelectMany(work => work.AllDays.Select(days => (Work: work, Days: days))).ToList();
        foreach (var feed in context.Work.Where(work => work.Kind == TaskKind.Feed && roots.Count > 0))
        {
            (Work Root, int Days)? worst = null;
            foreach (var (root, rootDays) in roots)
            {
                // Fed before the roots are cut is no matter here; a day that can lie on either side is not told.
                foreach (var days in feed.ToCome.Where(days => days.Start >= rootDays.End))
                {
                    var between = Recovery.MostDays(rootDays, days);
                    worst = between < limit && (worst is null || between < worst.Value.Days) && root.SharesTrunkWith(feed) ? (root, between) : worst;
                }
            }

            if (worst is var (cut, soon))
            {
                yield return Told(context, feed, cut, soon, limit);
            }
        }
    }

    private Finding Told(CheckContext context, Work feed, Work root, int days, double limit)
    {
        var gap = days == 0 ? "on the same day as" : $"at most {DayWording.Count(days)} after";
        return WorkDraft.Of(context, Description, feed, $"{WorkDraft.Name(feed)} on {WorkDraft.Trunks(feed)} comes {gap} {WorkDraft.Name(root)}, and fresh cut roots are left {LengthWording.Say(limit, 0)} days without fertiliser. Begin later.") with
        {
            Measured = days,
            Limit = limit,
            Unit = "days",
            Weight = -days,
            Related = [new RelatedPlace(context.Origins.Locate(root.Dated.Task.Origin), Wording.Name(root.Dated.Task.Name))],
        };
    }
}
