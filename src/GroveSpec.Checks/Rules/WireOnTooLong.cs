using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Wire;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Checks.Rules;

/// <summary>A wire that is not taken off in time.</summary>
internal sealed class WireOnTooLong : IRule
{
    private const int ShortestDays = 7;

    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "wire-on-too-long",
        Severity = Severity.Warning,
        Limit = new(56, ToleranceUnit.Days, ShortestDays, 365),
        Meaning = "No task takes a wire off, or it comes off too late.",
        Explanation = "A trunk thickens under its wire, and wire that bites leaves a scar for years. Common practice takes wire off within six to eight weeks of the thickening season; where the trunk is expected to have thickened by a quarter of the wire's own diameter before that, it comes off by then. Days on which the tree rests are not counted. How fast a species thickens is a wide guess: look at the tree.",
        Source = "common practice; seasonal curve after Rossi and others 2006; yearly increments from memory",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        foreach (var wire in WireDraft.Open(context).GroupBy(plan => plan.Term.Wire.Dated.Task.Name, StringComparer.Ordinal))
        {
            ImmutableArray<WirePlan> plans = [.. wire];
            var term = plans[0].Term;
            if (term.Removal is null)
            {
                yield return NeverOff(context, plans, limit);
            }
            else if (term.Removal.Undated is null && Late(context, plans, limit) is { } late)
            {
                yield return late;
            }
        }
    }

    private Finding NeverOff(CheckContext context, ImmutableArray<WirePlan> plans, double limit)
    {
        var term = plans[0].Term;
        var (name, on) = (term.Wire.Dated.Task.Name, term.On);
        var time = on is null ? "6 to 8 weeks" : Time(plans.Min(plan => DaysAllowed(plan, on.Value, limit).Days));
        var off = FreeName.Of(context, name + "-off");
        var lines = ImmutableArray.Create($"task {off} unwire of {name} {time} after {name}");
        var alsoLooks = "";
        if (term.Looks.IsEmpty)
        {
            lines = [$"task {FreeName.Of(context, name + "-look")} look-over of {name} every 2 weeks until {off}", .. lines];
            alsoLooks = "looks it over and ";
        }

        var finding = WorkDraft.Of(context, Description, term.Wire, $"{WorkDraft.Name(term.Wire)} puts wire on {WorkDraft.Trunks(term.Wire)}, and nothing takes it off. Add a task that takes it off {time} after it.", term.Wire.Dated.Task.Origin);
        return finding with
        {
            Limit = limit,
            Unit = "days",
            Weight = 1e6,
            Remedies = [new Remedy($"add work that {alsoLooks}takes it off {time} after it", [context.Origins.WriteBehind(term.Wire.Dated.Task.Origin, lines.AsSpan())]), .. finding.Remedies],
        };
    }

    private Finding? Late(CheckContext context, ImmutableArray<WirePlan> plans, double limit)
    {
        var term = plans[0].Term;
        if (term.On is not { } on)
        {
            return null;
        }

        if (term.Off is not { } planned)
        {
            return WorkDraft.Of(context, Description, term.Wire, $"{WorkDraft.Name(term.Wire)} is put on {WorkDraft.Trunks(term.Wire)} by {DayWording.Say(on)}, and {Wording.Name(term.Removal!.Task.Name)} takes it off with no last day. Say by when it is off.", term.Wire.Dated.Task.Origin) with
            {
                Limit = limit,
                Unit = "days",
                Weight = 1e6,
                Related = [new RelatedPlace(context.Origins.Locate(term.Removal.Task.Origin), "takes the wire off, with no last day")],
            };
        }

        // What should be off and is not marked as done is on until today.
        var isOverdue = !term.Wire.Dated.Task.Done.IsEmpty && context.State.Date is { } today && today > planned;
        var off = isOverdue ? context.State.Date!.Value : planned;
        var worst = plans.Select(plan => (Plan: plan, Days: Thickening.GrowingDays(plan.Kind.Year, on, off), Allowed: DaysAllowed(plan, on, limit)))
            .MaxBy(found => found.Days - found.Allowed.Days);
        if (worst.Days <= worst.Allowed.Days)
        {
            return null;
        }

        var why = worst.Allowed.Bite is { } bite
            ? $"{Wording.Name(worst.Plan.Trunk.Name)} is expected to have thickened into it by about {DayWording.Say(bite)}"
            : $"common practice takes it off within {LengthWording.Say(limit, 0)}";
        var message = $"{WorkDraft.Name(term.Wire)} is on {WorkDraft.Trunks(term.Wire)} {(isOverdue ? "since" : "from about")} {DayWording.Say(on)} {(isOverdue ? "and not marked as taken off, by" : "until as late as")} {DayWording.Say(off)}: {DayWording.Count(worst.Days)} in which the tree grows, and {why}. {(isOverdue ? "Look at it today, and take it off" : $"Take it off by {DayWording.Say(LastDay(worst.Plan, on, worst.Allowed.Days))}")}, or sooner where it begins to mark the bark.";
        var finding = WorkDraft.Of(context, Description, term.Wire, message, term.Wire.Dated.Task.Origin) with
        {
            Measured = worst.Days,
            Limit = worst.Allowed.Days,
            Unit = "days",
            Weight = worst.Days - worst.Allowed.Days,
            Related = [new RelatedPlace(context.Origins.Locate(term.Removal!.Task.Origin), "takes the wire off")],
        };
        return isOverdue || Sooner(context, term, worst.Allowed.Days) is not { } remedy ? finding : finding with { Remedies = [remedy, .. finding.Remedies] };
    }

    /// <summary>The days of growth that a wire may be on, and the day of biting where that comes first.</summary>
    private static (int Days, LocalDate? Bite) DaysAllowed(WirePlan plan, LocalDate on, double limit)
    {
        var usual = (int)limit;
        if (plan.BiteBy(isSoonest: false) is not { } bite)
        {
            return (usual, null);
        }

        var days = Math.Max(ShortestDays, Thickening.GrowingDays(plan.Kind.Year, on, bite));
        return days < usual ? (days, bite) : (usual, null);
    }

    private static LocalDate LastDay(WirePlan plan, LocalDate on, int days)
    {
        var day = on.PlusDays(days);
        while (Thickening.GrowingDays(plan.Kind.Year, on, day.PlusDays(1)) <= days)
        {
            day = day.PlusDays(1);
        }

        return day;
    }

    private static Remedy? Sooner(CheckContext context, WireTerm term, int days)
    {
        var wire = term.Wire.Dated.Task.Name;
        return term.Removal is { Task: { Done.IsEmpty: true, Times: [TimeClause.Offset { IsAfter: true } offset] } } && offset.Task == wire
            ? new Remedy($"take it off {Time(days)} after it", [new(context.Origins.Locate(offset.Origin), $"{Time(days)} after {wire}")])
            : null;
    }

    private static string Time(int days) => days >= 56 ? "6 to 8 weeks" : string.Create(CultureInfo.InvariantCulture, $"{days * 3 / 4} to {days} days");
}
