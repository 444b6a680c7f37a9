using GroveSpec.Checks.Judging;
using GroveSpec.Checks.Rules;
using GroveSpec.Craft.Ground;
using GroveSpec.Craft.Views;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>
/// Tells of any place whether a newcomer that stands there raises a finding: the checks' own answer, worked out from tables
/// made once for a planting. One judge serves one thread.
/// </summary>
internal sealed class GroundJudge
{
    /// <summary>The checks whose findings depend on the newcomer's place.</summary>
    private static readonly string[] Names =
    [
        "three-in-line", "even-gaps", "even-gaps-in-view", "twin-diameters", "twin-heights", "hidden-trunk",
        "depth-reversed", "level-tops", "centred-main", "touching", "near-rim", "off-container",
    ];

    private readonly GroundCase ground;
    private readonly GroundCheck[] checks;
    private readonly GroundStand stand;
    private readonly GroundContacts contacts;
    private readonly GroundRods rods;
    private readonly GroundGaps gaps;
    private readonly GroundTwins diameters;
    private readonly GroundTwins heights;
    private readonly (ulong Three, int FirstPair, int SecondPair)[] latentRods;
    private readonly GroundCheck line;
    private readonly GroundCheck even;
    private readonly GroundCheck evenInView;
    private readonly GroundCheck twinDiameters;
    private readonly GroundCheck twinHeights;
    private readonly GroundCheck hidden;
    private readonly GroundCheck reversed;
    private readonly GroundCheck level;
    private readonly GroundCheck centred;
    private readonly GroundCheck touching;
    private readonly GroundCheck nearRim;
    private readonly GroundCheck offContainer;
    private readonly RimReach? rim;
    private readonly (Bearing Right, Length Middle, Length Width)? centreLine;
    private readonly GroundGuess guess;
    private readonly GroundView usualView;
    private readonly double usualWithin;
    private readonly bool isEyeUnmoved;
    private readonly ulong[] pairs;
    private readonly ulong[] told;
    private readonly ulong[] found;
    private List<GroundReason>? all;

    /// <summary>Lays out a planting.</summary>
    /// <param name="ground">The planting and the newcomer; at most <see cref="GroundStand.MostTrunks"/> stand with it.</param>
    public GroundJudge(GroundCase ground)
        : this(ground, null)
    {
    }

    private GroundJudge(GroundCase ground, GroundJudge? other)
    {
        this.ground = ground;
        var context = ground.Without;
        var limits = new Limits(context);
        checks = [.. Names.Select(name => new GroundCheck(context, limits, name, ground.SetOf))];
        (line, even, evenInView, twinDiameters, twinHeights, hidden) = (checks[0], checks[1], checks[2], checks[3], checks[4], checks[5]);
        (reversed, level, centred, touching, nearRim, offContainer) = (checks[6], checks[7], checks[8], checks[9], checks[10], checks[11]);
        foreach (var finding in ground.Found)
        {
            if (Array.Find(checks, check => check.Description == finding.Check) is { } check && ground.SetOf(finding.Trunks) is { } trunks)
            {
                check.Allow(trunks);
            }
        }

        var diameter = ground.Newcomer.Diameter?.Value ?? Length.Zero;
        stand = new(ground.Others, ground.Slot, diameter);
        contacts = new(stand, context.Planting.EffectiveHabit == Habit.Clump);
        (rods, gaps) = (new(stand, line.Limit), new(stand, even.Limit));
        diameters = new(stand, [.. ground.Trunks.Select(trunk => trunk.Diameter?.Value)], twinDiameters.Limit);
        heights = new(stand, [.. ground.Trunks.Select(trunk => trunk.Height?.Value)], twinHeights.Limit);
        latentRods = other?.latentRods ?? (line.IsOn ? [.. rods.OfOthers().Where(rod => line.Takes(rod.Three))] : []);
        var origin = ground.At(PlanPoint.Origin);
        usualView = ViewAt(ViewFrame.Of(NameOrder.Of(origin.State)));
        guess = new([.. ground.Trunks.Select((trunk, index) => index == ground.Slot ? trunk with { Place = PlanPoint.Origin } : trunk)], ground.Slot, usualView.Frame, ground.Others.MedianNearestGap * 2.5, evenInView.Limit);
        usualWithin = usualView.Frame.IsDistanceAssumed ? usualView.Frame.Distance.Millimetres / 6 * (1 - 1e-12) : double.PositiveInfinity;

        // An eye that nobody placed follows the tallest and the farthest trunk, so that even what is seen of the others may change.
        var eye = context.View.Frame;
        isEyeUnmoved = eye.Distance == usualView.Frame.Distance && eye.EyeHeight == usualView.Frame.EyeHeight;
        rim = context.Outline is { } outline ? new(outline, diameter) : null;
        centreLine = centred.IsOn && context.Outline is { } around && ground.Trunks.Length > 1
            && ReferenceEquals(CentredMain.LargestFirst(ground.Trunks).FirstOrDefault(), ground.Newcomer) ? CentredMain.LineOf(origin.View.Frame.From, around) : null;
        (pairs, told, found) = (new ulong[stand.Count + 1], new ulong[stand.Count], new ulong[(stand.Count * stand.Count) + 4]);
    }

    /// <summary>Another judge of the same ground, for another thread, sooner laid out than the first.</summary>
    /// <returns>The judge.</returns>
    public GroundJudge Another() => new(ground, this);

    /// <summary>Whether places may have to be judged by the checks themselves, which takes a hundred times as long: so many stand in a heap.</summary>
    public bool IsSlow => stand.MayHeap;

    /// <summary>The finding that was met first at the last place that is not free.</summary>
    public GroundReason Reason { get; private set; }

    /// <summary>Whether every place at which the newcomer reaches past the rim is told as taken, so that nothing beyond it is ever free.</summary>
    public bool KeepsWithinRim => rim is not null && offContainer.IsOn && offContainer.Takes(ground.Own);

    /// <summary>Whether a newcomer at a place raises no finding that is not there without it, but for those it raises at any place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>True when it raises none.</returns>
    public bool IsFree(PlanPoint place)
    {
        all = null;
        return !Looks(place);
    }

    /// <summary>Whether a finding that was met at one place is likely to be met at another: a guess, in a small part of the time that looking takes.</summary>
    /// <param name="reason">The finding.</param>
    /// <param name="place">The place.</param>
    /// <returns>The guess; null for a finding that hangs on more than the trunks it is about.</returns>
    public bool? IsLikely(GroundReason reason, PlanPoint place)
    {
        if (Is(hidden))
        {
            usualView.Set(place);
            return (usualView.Hidden() & reason.Trunks) != 0;
        }

        if (Is(line))
        {
            return guess.IsPassed(reason.Trunks, place, line.Limit);
        }

        if (Is(even))
        {
            return guess.AreGapsEven(reason.Trunks, place, even.Limit);
        }

        return (reason.Trunks & ground.Own) == 0 ? null
            : Is(evenInView) ? guess.AreGapsEvenInView(reason.Trunks, place, evenInView.Limit)
            : Is(level) ? guess.AreLevel(reason.Trunks, place, level.Limit)
            : Is(touching) ? guess.DoTouch(reason.Trunks, place)
            : Is(nearRim) ? !rim!.IsWellWithin(place, nearRim.Limit) && rim.Room(place).Millimetres < nearRim.Limit
            : Is(offContainer) ? !rim!.IsWellWithin(place, 0) && rim.Room(place) < Length.Zero
            : null;

        // Asked so often that names are not compared.
        bool Is(GroundCheck check) => ReferenceEquals(reason.Check, check.Description);
    }

    /// <summary>Places between two at which a finding is likely to begin and to end again, and such beside them.</summary>
    /// <param name="from">A place.</param>
    /// <param name="to">Another.</param>
    /// <returns>The places, the nearest to <paramref name="from"/> first.</returns>
    public IReadOnlyList<PlanPoint> NarrowBetween(PlanPoint from, PlanPoint to) => evenInView.IsOn ? guess.StripsBetween(from, to) : [];

    /// <summary>All findings that a newcomer at a place raises, but for those it raises at any place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The findings, each once, in no particular order.</returns>
    public List<GroundReason> Reasons(PlanPoint place)
    {
        var reasons = all = [];
        Looks(place);
        all = null;
        return [.. reasons.Distinct()];
    }

    /// <summary>How even the gaps between neighbours are with the newcomer at a place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>From above 0 to 1.</returns>
    public double GapEvenness(PlanPoint place)
    {
        if (!stand.Set(place))
        {
            return 1;
        }

        stand.Connect();
        return stand.GapEvenness();
    }

    private bool Looks(PlanPoint place)
    {
        if (IsAtRim(place))
        {
            return true;
        }

        if (!stand.Set(place))
        {
            return LooksAtAll(place);
        }

        if (LooksAtTwins())
        {
            return true;
        }

        var touches = touching.IsOn ? contacts.Find(pairs) : 0;
        if (Tell(touching, pairs.AsSpan(0, touches)) || LooksAtOwn(touches))
        {
            return true;
        }

        var isUsual = ViewFrame.Distant(place) <= usualWithin;
        var view = isUsual ? usualView : ViewAt(ViewFrame.Of(NameOrder.Of(ground.At(place).State)));
        view.Set(place);
        var covered = hidden.IsOn ? view.Hidden() : 0;
        if (LooksAtView(view, isUsual, covered, touches))
        {
            return true;
        }

        stand.Connect();
        return LooksAtNeighbours(touches, out var evens)
            || (evenInView.IsOn && Tell(evenInView, Untold(found, view.EvenGaps(found, ofNewcomerAlone: false), touches, covered, told.AsSpan(0, evens))));
    }

    private bool IsAtRim(PlanPoint place)
    {
        var isMain = centreLine is { } middle && CentredMain.IsCentred(middle, place, centred.Limit);
        if (isMain && Tell(centred, [ground.Own]))
        {
            return true;
        }

        if (rim is not null && KeepsWithinRim && rim.IsWellBeyond(place))
        {
            return Tell(offContainer, [ground.Own]);
        }

        if (rim is null || rim.IsWellWithin(place, nearRim.IsOn ? nearRim.Limit : 0))
        {
            return false;
        }

        var room = rim.Room(place);
        return room < Length.Zero
            ? offContainer.IsOn && Tell(offContainer, [ground.Own])
            : nearRim.IsOn && NearRim.IsNear(room, nearRim.Limit) && Tell(nearRim, [ground.Own]);
    }

    /// <summary>Looks whether the newcomer's own neighbours are of its size, so that most places are settled before all neighbours are known.</summary>
    private bool LooksAtTwins()
    {
        if (all is null && twinDiameters.IsOn && (diameters.OfNewcomer & stand.OwnNeighbours) is > 0 and var alike && (twinDiameters.AllowedTrunks & ground.Own) == 0)
        {
            Reason = new(twinDiameters.Description, alike | ground.Own);
            return true;
        }

        if (all is null && twinHeights.IsOn && (heights.OfNewcomer & stand.OwnNeighbours) is > 0 and var tall && (twinHeights.AllowedTrunks & ground.Own) == 0)
        {
            Reason = new(twinHeights.Description, tall | ground.Own);
            return true;
        }

        return false;
    }

    private bool LooksAtOwn(int touches)
    {
        if (!line.IsOn)
        {
            return false;
        }

        var most = all is null && touches == 0 && (line.AllowedTrunks & ground.Own) == 0 ? 1 : int.MaxValue;
        return Tell(line, Untold(found, rods.OfOwn(found, most), touches, 0, []));
    }

    private bool LooksAtView(GroundView view, bool isUsual, ulong covered, int touches)
    {
        for (var rest = covered; rest != 0; rest &= rest - 1)
        {
            if (Tell(hidden, [rest & (~rest + 1)]))
            {
                return true;
            }
        }

        if (level.IsOn && Tell(level, found.AsSpan(0, view.LevelTops(found, isUsual && isEyeUnmoved))))
        {
            return true;
        }

        if (reversed.IsOn && ground.Without.Planting.Viewed?.Depth is { } depth
            && view.ThickWithNear() is var (coefficient, trunks) && DepthReversed.IsReversed(depth, coefficient, trunks, reversed.Limit) && Tell(reversed, [0]))
        {
            return true;
        }

        // Gaps that the newcomer makes even in the view are told of the view or, where they are even from above, there.
        return all is null && evenInView.IsOn && ((evenInView.AllowedTrunks | even.AllowedTrunks) & ground.Own) == 0
            && Tell(evenInView, Untold(found, view.EvenGaps(found, ofNewcomerAlone: true), touches, covered, []));
    }

    private bool LooksAtNeighbours(int touches, out int evens)
    {
        evens = 0;
        if (line.IsOn && Tell(line, Untold(found, rods.OfEnds(found, int.MaxValue), touches, 0, [])))
        {
            return true;
        }

        foreach (var (three, first, second) in latentRods)
        {
            if (rods.AreNeighbours(first) && rods.AreNeighbours(second))
            {
                found[0] = three;
                if (Tell(line, Untold(found, 1, touches, 0, [])))
                {
                    return true;
                }
            }
        }

        if (even.IsOn)
        {
            var kept = Untold(found, gaps.Find(found), touches, 0, []);
            evens = kept.Length;
            kept.CopyTo(told);
            if (Tell(even, kept))
            {
                return true;
            }
        }

        return (twinDiameters.IsOn && !diameters.AreUnchanged && Tell(twinDiameters, found.AsSpan(0, diameters.Find(found))))
            || (twinHeights.IsOn && !heights.AreUnchanged && Tell(twinHeights, found.AsSpan(0, heights.Find(found))));
    }

    /// <summary>Runs the checks themselves, where the tables do not hold.</summary>
    private bool LooksAtAll(PlanPoint place)
    {
        Span<ulong> one = stackalloc ulong[1];
        foreach (var finding in Checker.Composition(ground.At(place), CancellationToken.None))
        {
            one[0] = ground.SetOf(finding.Trunks)!.Value;
            if (!ground.IsOfAnyPlace(finding.Check, one[0]) && Tell(Array.Find(checks, check => check.Description == finding.Check)!, one))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Leaves out of threes what another check has told: those of which two touch, one is hidden, or the gaps are even from above.</summary>
    private ReadOnlySpan<ulong> Untold(ulong[] threes, int count, int touches, ulong covered, ReadOnlySpan<ulong> evens)
    {
        if (touches == 0 && covered == 0 && evens.IsEmpty)
        {
            return threes.AsSpan(0, count);
        }

        var kept = 0;
        for (var index = 0; index < count; index++)
        {
            var three = threes[index];
            var isTold = (three & covered) != 0 || evens.Contains(three);
            for (var pair = 0; pair < touches && !isTold; pair++)
            {
                isTold = (pairs[pair] & ~three) == 0;
            }

            if (!isTold)
            {
                threes[kept++] = three;
            }
        }

        return threes.AsSpan(0, kept);
    }

    /// <summary>Whether one of some findings takes the ground, so that no more has to be looked at.</summary>
    private bool Tell(GroundCheck check, ReadOnlySpan<ulong> findings)
    {
        foreach (var trunks in findings)
        {
            if (check.Takes(trunks))
            {
                Reason = new(check.Description, trunks);
                if (all is null)
                {
                    return true;
                }

                all.Add(Reason);
            }
        }

        return false;
    }

    private GroundView ViewAt(ViewFrame frame) => new(
        [.. ground.Trunks.Select((trunk, index) => index == ground.Slot ? trunk with { Place = PlanPoint.Origin } : trunk)],
        ground.Slot, frame, evenInView.Limit, level.Limit, hidden.Limit);
}
