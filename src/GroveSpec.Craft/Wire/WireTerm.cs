using System.Collections.Immutable;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Tasks;
using NodaTime;

namespace GroveSpec.Craft.Wire;

/// <summary>How long a wire is on the tree, and when it is looked at.</summary>
/// <param name="Wire">The task that puts it on.</param>
/// <param name="Removal">The task that takes it off; null when there is none.</param>
/// <param name="Looks">The tasks that look it over, in the order of the file.</param>
public sealed record WireTerm(Work Wire, DatedTask? Removal, ImmutableArray<DatedTask> Looks)
{
    /// <summary>The day on which it is put on: the one on which it was done, else the last on which it may be; null without one.</summary>
    public LocalDate? On => Wire.Dated.Task.Done.IsEmpty ? Wire.Dated.Window?.Latest : Wire.Dated.Task.Done.Min(done => done.Value);

    /// <summary>The day by which it is off: the one on which it was taken off, else the last on which it may be; null without one.</summary>
    public LocalDate? Off => Removal?.Window?.Latest;

    /// <summary>Whether it was taken off.</summary>
    public bool IsOff => Removal is { Task.Done.IsEmpty: false };

    /// <summary>The terms of all wires among some work.</summary>
    /// <param name="work">All work of the planting.</param>
    /// <returns>One for each wire task, in the order of the file.</returns>
    public static ImmutableArray<WireTerm> Of(ImmutableArray<Work> work)
    {
        if (!work.Any(one => one.Kind == TaskKind.Wire))
        {
            return [];
        }

        var removals = new Dictionary<string, DatedTask>(StringComparer.Ordinal);
        var ownLooks = new Dictionary<string, List<DatedTask>>(StringComparer.Ordinal);
        var looksAtTrunks = new List<Work>();
        foreach (var one in work)
        {
            var of = (one.Dated.Task.Target as TaskTarget.OfTask)?.Name.Value;
            if (one.Kind == TaskKind.Unwire && of is not null)
            {
                removals.TryAdd(of, one.Dated);
            }
            else if (one.Kind == TaskKind.LookOver && of is not null)
            {
                if (!ownLooks.TryGetValue(of, out var looks))
                {
                    ownLooks.Add(of, looks = []);
                }

                looks.Add(one.Dated);
            }
            else if (one.Kind == TaskKind.LookOver)
            {
                looksAtTrunks.Add(one);
            }
        }

        return
        [
            .. work.Where(one => one.Kind == TaskKind.Wire).Select(wire =>
            {
                var removal = removals.GetValueOrDefault(wire.Dated.Task.Name);
                var looks = ownLooks.GetValueOrDefault(wire.Dated.Task.Name) ?? [];
                var term = new WireTerm(wire, removal, []);
                return term with { Looks = [.. looks, .. looksAtTrunks.Where(term.IsSeenBy).Select(look => look.Dated)] };
            }),
        ];
    }

    /// <summary>The most days of growth on end in which nobody looks at the wire.</summary>
    /// <param name="kind">The species, whose rest is not counted.</param>
    /// <returns>The days from the wire to the first look, between looks, or from the last look until it is off; where it is not known when it is off, until the last look. Null when it is not known when it is put on, and when nobody looks at it at all.</returns>
    public int? LongestUnwatched(TreeKind kind)
    {
        if (On is not { } last || Looks.IsEmpty)
        {
            return null;
        }

        var most = 0;
        foreach (var day in LookDays().Where(day => day > last && (Off is not { } end || day <= end)).Order())
        {
            most = Math.Max(most, Thickening.GrowingDays(kind.Year, last, day));
            last = day;
        }

        return Off is { } off ? Math.Max(most, Thickening.GrowingDays(kind.Year, last, off)) : most;
    }

    /// <summary>The days of looking: those on which it was done, each turn of one that comes again, and the last day of one that does not.</summary>
    private IEnumerable<LocalDate> LookDays()
    {
        foreach (var look in Looks)
        {
            foreach (var done in look.Task.Done)
            {
                yield return done.Value;
            }

            foreach (var turn in look.Repeats)
            {
                yield return turn;
            }

            if (look.Repeats.IsEmpty && look.Task.Done.IsEmpty && look.Window?.Latest is { } day)
            {
                yield return day;
            }
        }
    }

    /// <summary>Whether a look at some trunks is one at this wire: it is done to all of them, while the wire is on.</summary>
    private bool IsSeenBy(Work look) => Wire.Trunks.Length > 0 && (look.IsOfAll || Wire.Trunks.All(trunk => look.Trunks.BinarySearch(trunk, StringComparer.Ordinal) >= 0))
        && look.Dated.Window is { } window && !(window.Latest < On) && !(window.Earliest > Off);
}
