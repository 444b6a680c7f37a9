using System.Collections.Immutable;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using NodaTime;

namespace GroveSpec.Checks.Rules;

/// <summary>A species that the site's winter can kill, without a shelter before the first frost.</summary>
internal sealed class NoShelter : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "no-shelter",
        Severity = Severity.Warning,
        Meaning = "A species is less hardy than the site is cold, and nothing shelters it before the first frost.",
        Explanation = "A hardiness zone says how cold the coldest night of a year is on average, and a species' zones are those in which it lives outdoors in the ground. Roots in a container are less hardy than that. It is told where even the warmer half of the site's zone lies below the coldest that the species stands, and no shelter task can begin by the usual first frost.",
        Source = "the bands of the USDA plant hardiness map",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var planting = context.Planting;
        var covers = context.Work.Where(work => work.Kind == TaskKind.Shelter && work.Dated.Undated is null).ToList();
        foreach (var group in planting.Trunks.Where(trunk => trunk.Removed is null).GroupBy(planting.SpeciesOf, StringComparer.Ordinal).Where(group => group.Key is not null))
        {
            if (Tenderness.Of(WorkList.KindOf(planting, group.Key), planting.Site) is not { } tender)
            {
                continue;
            }

            var bare = new List<string>();
            (LocalDate Frost, LocalDate Begins)? late = null;
            foreach (var trunk in group.OrderBy(trunk => trunk.Name, StringComparer.Ordinal))
            {
                ImmutableArray<Work> shelters = [.. covers.Where(work => work.IsOfAll || work.Trunks.BinarySearch(trunk.Name, StringComparer.Ordinal) >= 0)];
                if (shelters.IsEmpty || Tenderness.TooLate(tender.Kind, shelters) is not null)
                {
                    late ??= shelters.IsEmpty ? null : Tenderness.TooLate(tender.Kind, shelters);
                    bare.Add(trunk.Name);
                }
            }

            if (bare.Count > 0)
            {
                yield return Told(context, tender, [.. bare.Order(StringComparer.Ordinal)], late, bare.Count == planting.Trunks.Length);
            }
        }
    }

    private Finding Told(CheckContext context, Tenderness tender, ImmutableArray<string> bare, (LocalDate Frost, LocalDate Begins)? late, bool isOfAll)
    {
        var what = late is { } known
            ? $"the shelter begins on {DayWording.Say(known.Begins)}, after the usual first frost, {DayWording.Say(known.Frost)}: let it begin sooner"
            : "no task shelters it: add one that begins before the first frost";
        ImmutableArray<string> trunks = isOfAll ? [] : bare;
        return new Finding
        {
            Check = Description,
            Severity = Description.Severity,
            Place = context.Origins.Locate((context.Planting.Site?.Zone?.Origin) ?? Origin.Default),
            Message = $"Zone {tender.Coldest} is the coldest that {tender.Kind.Said} ({(isOfAll ? "all trunks" : Wording.List(bare))}) stands in the ground, and this site is zone {tender.Site}; {what}.",
            Trunks = trunks,
            Remedies = Acceptance.Offer(context, Description, trunks),
        };
    }
}
