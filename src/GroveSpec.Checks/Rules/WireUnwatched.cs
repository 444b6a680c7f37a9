using GroveSpec.Checks.Judging;
using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Rules;

/// <summary>A wire that nobody looks at, or not often enough.</summary>
internal sealed class WireUnwatched : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "wire-unwatched",
        Severity = Severity.Warning,
        Limit = new(28, ToleranceUnit.Days, 7, 182),
        Meaning = "Nobody looks a wire over while it is on, or not for weeks in which the tree grows.",
        Explanation = "Trunks do not thicken by the calendar: a warm spell can drive wire into the bark weeks before its day. Common practice looks at wired trunks within weeks, and again until the wire is off. The limit is how many days of growth may pass between looks; days on which the tree rests are not counted.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        foreach (var plan in WireDraft.Open(context).DistinctBy(plan => plan.Term.Wire.Dated.Task.Name, StringComparer.Ordinal))
        {
            var (term, name) = (plan.Term, plan.Term.Wire.Dated.Task.Name);
            var said = $"{WorkDraft.Name(term.Wire)} is on {WorkDraft.Trunks(term.Wire)}";
            if (term.Looks.IsEmpty)
            {
                var finding = WorkDraft.Of(context, Description, term.Wire, $"{said}, and no task looks it over. Add one that does, every 2 weeks until it is off.", term.Wire.Dated.Task.Origin) with { Limit = limit, Unit = "days", Weight = 1e6 };
                yield return term.Removal is not { } removal ? finding : finding with
                {
                    Remedies =
                    [
                        new Remedy("add a task that looks it over every 2 weeks", [context.Origins.WriteBehind(term.Wire.Dated.Task.Origin, $"task {FreeName.Of(context, name + "-look")} look-over of {name} every 2 weeks until {removal.Task.Name}")]),
                        .. finding.Remedies,
                    ],
                };
            }
            else if (plan.Term.LongestUnwatched(plan.Kind) is { } days && days > limit)
            {
                yield return WorkDraft.Of(context, Description, term.Wire, $"{said}, and for {DayWording.Count(days)} of growth on end nobody looks at it; common practice looks within weeks. Look every 2 weeks, or at least every {LengthWording.Say(limit, 0)} days.", term.Wire.Dated.Task.Origin) with
                {
                    Measured = days,
                    Limit = limit,
                    Unit = "days",
                    Weight = days - limit,
                    Related = [.. term.Looks.Select(look => new RelatedPlace(context.Origins.Locate(look.Task.Origin), "looks it over"))],
                };
            }
        }
    }
}
