using System.Collections.Immutable;
using GroveSpec.Checks.Choosing;
using GroveSpec.Checks.Judging;
using GroveSpec.Checks.Moving;
using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>Finds the best spots of free ground, or where none is free the least bad.</summary>
internal sealed class SpotSearch
{
    /// <summary>More room to the nearest finding than a finger's breadth counts no more.</summary>
    public static readonly Length RoomEnough = Length.FromMillimetres(10);

    private const int MostWeighed = 1500;
    private const int MostMeasured = 150;
    private const int MostSampled = 1200;
    private const int MostSampledInAHeap = 200;

    private readonly CheckContext context;
    private readonly GroundCase ground;
    private readonly GroundBounds bounds;
    private readonly IReadOnlyList<GroundJudge> judges;
    private readonly GroundTest test;
    private readonly Action<int, Action<int>> sideBySide;
    private readonly GroundLattice lattice;
    private readonly GroundBalance balance;
    private readonly FirstPlace? first;
    private readonly Lazy<HashSet<string>> known;
    private readonly Length widestGap;

    /// <summary>Prepares a search.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="ground">It with the newcomer.</param>
    /// <param name="bounds">Where the ground ends.</param>
    /// <param name="judges">Tell of findings, one for each piece of work that may be done beside others.</param>
    /// <param name="test">Tells what takes a place of the lattice.</param>
    /// <param name="lattice">The places that were looked at.</param>
    /// <param name="sideBySide">Does so many pieces of work, each told its number from 0, at once or one after another.</param>
    public SpotSearch(CheckContext context, GroundCase ground, GroundBounds bounds, IReadOnlyList<GroundJudge> judges, GroundTest test, GroundLattice lattice, Action<int, Action<int>> sideBySide)
    {
        (this.context, this.ground, this.bounds, this.judges, this.test, this.lattice, this.sideBySide) = (context, ground, bounds, judges, test, lattice, sideBySide);
        balance = new(ground.Others, Diameter, ground.Without.Outline);
        first = FirstPlace.Of(context, ground);
        var others = ground.Others.Trunks;
        widestGap = others.Length < 2 ? Length.Zero : others.Max(one => others.Where(other => !ReferenceEquals(other, one)).Min(other => other.Place!.Value.DistanceTo(one.Place!.Value)));
        known = new(() => ground.Found.Select(KeyOf).ToHashSet(StringComparer.Ordinal));
    }

    private Length Diameter => ground.Newcomer.Diameter?.Value ?? Length.Zero;

    /// <summary>Spots that are told together lie as far apart, from centre to centre: twice the newcomer's diameter, and a fifth of the side of a square as large as the ground at the least.</summary>
    private Length Apart => Length.FromMillimetres(Math.Max(
        2 * Diameter.Millimetres,
        Math.Sqrt(ground.Without.Outline?.AreaInSquareMillimetres ?? ((bounds.Greatest.X - bounds.Least.X).Millimetres * (bounds.Greatest.Y - bounds.Least.Y).Millimetres)) / 5));

    /// <summary>Adds the spots, and what is the same wherever the newcomer stands.</summary>
    /// <param name="answer">The ground.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The whole answer.</returns>
    public GroundAnswer Complete(GroundAnswer answer, CancellationToken cancellation)
    {
        var best = FreeSpots(answer, cancellation);
        best = best.Count > 0 ? best : LeastBad(cancellation);
        var takers = Takers();
        PlanPoint[] places = best.Count > 0 ? [.. best.Select(spot => spot.Place)] : [bounds.Least];
        var changes = new Change[places.Length];
        sideBySide(places.Length, number => changes[number] = ChangeAt(places[number]));
        return answer with
        {
            Takers = takers,
            Spots = [.. best.Select((spot, number) => Told(spot, changes[number], answer.IsOneMore))],
            Anywhere = changes[0].Anywhere,
        };
    }

    private List<Candidate> FreeSpots(GroundAnswer answer, CancellationToken cancellation)
    {
        var room = lattice.RoomInSteps();
        var most = room.Max();
        if (most == 0)
        {
            return [];
        }

        // Places with room enough, or nearly as much as there is; of very many, evenly picked ones.
        var step = lattice.Step.Millimetres;
        var wanted = Math.Min(RoomEnough.Millimetres / step, most * 0.6);
        var candidates = Enumerable.Range(0, room.Length).Where(index => room[index] >= wanted).ToList();
        var every = Math.Max(1, (candidates.Count + MostWeighed - 1) / MostWeighed);
        var weighed = InParts(
            (candidates.Count + every - 1) / every,
            (judge, number) =>
            {
                var index = candidates[number * every];
                var place = lattice.PlaceOf(index % lattice.Columns, index / lattice.Columns);
                return (Place: place, Score: Score(judge, place, Length.FromMillimetres(room[index] * step)));
            },
            cancellation);
        PlanPoint[] likely = [.. weighed.OrderBy(one => one.Score).ThenBy(one => one.Place.X).ThenBy(one => one.Place.Y).Take(MostMeasured).Select(one => one.Place), .. Peaks(room), .. FirstPlaces()];
        var measured = InParts(likely.Length, (judge, number) => Measured(answer, judge, likely[number]), cancellation);

        // No hand sets a trunk nearer than a step, so a spot with less room is told only where there is no better; nor is one on the centre line for a first trunk.
        var ranked = measured.OfType<Candidate>().OrderBy(one => Math.Round(one.Score, 9)).ThenByDescending(one => one.Room).ThenBy(one => one.Place.X).ThenBy(one => one.Place.Y).ToList();
        var roomy = ranked.Where(one => one.Room >= HandStep.Of(context.Units) && first?.IsCentred(one.Place) != true).ToList();
        return FarApart(roomy.Count > 0 ? roomy : ranked.Take(1));
    }

    private Candidate? Measured(GroundAnswer answer, GroundJudge judge, PlanPoint place) =>
        OutlineReach.Nearest(answer.Outline, place) is var (edge, room) ? new(place, Score(judge, place, room), room, edge) : null;

    /// <summary>Works something out for each of some numbers, each part of them with a judge of its own.</summary>
    private T[] InParts<T>(int count, Func<GroundJudge, int, T> work, CancellationToken cancellation)
    {
        var results = new T[count];
        sideBySide(judges.Count, part =>
        {
            for (var number = part; number < count; number += judges.Count)
            {
                cancellation.ThrowIfCancellationRequested();
                results[number] = work(judges[part], number);
            }
        });
        return results;
    }

    /// <summary>The places with the most room round them, so that each part of the ground has one to offer.</summary>
    private IEnumerable<PlanPoint> Peaks(double[] room)
    {
        var (apart, taken) = (Apart, new List<PlanPoint>());
        foreach (var index in Enumerable.Range(0, room.Length).Where(index => room[index] > 0).OrderByDescending(index => room[index]).ThenBy(index => index).Take(20 * MostMeasured))
        {
            var place = lattice.PlaceOf(index % lattice.Columns, index / lattice.Columns);
            if (taken.TrueForAll(other => other.DistanceTo(place) >= apart))
            {
                taken.Add(place);
                yield return place;
                if (taken.Count == 2 * FreeGround.MostSpots)
                {
                    yield break;
                }
            }
        }
    }

    /// <summary>The places that the first trunk is best set to, where they are free.</summary>
    private IEnumerable<PlanPoint> FirstPlaces() => (first?.Best ?? [])
        .Select(place => new PlanPoint(HandStep.Nearest(place.X, context.Units), HandStep.Nearest(place.Y, context.Units)))
        .Where(place => bounds.Contains(place) && judges[0].IsFree(place));

    private double Score(GroundJudge judge, PlanPoint place, Length room) =>
        Math.Max(0, (RoomEnough - room) / RoomEnough)
        + ThinningScore.OfEvenness(judge.GapEvenness(place))
        + (first?.Loss(place) ?? (ThinningScore.SoftWeight * balance.Imbalance(place)))
        + (ThinningScore.SoftWeight * Loneliness(place));

    /// <summary>What the gap to the nearest trunk is over the widest gap from any to its nearest, against that: a trunk that stands far off is none of the group.</summary>
    private double Loneliness(PlanPoint place) =>
        widestGap > Length.Zero ? Math.Max(0, (ground.Others.Trunks.Min(trunk => trunk.Place!.Value.DistanceTo(place)) - widestGap) / widestGap) : 0;

    /// <summary>The first of some spots, each left out that lies too near one before it.</summary>
    private List<Candidate> FarApart(IEnumerable<Candidate> ranked)
    {
        var (apart, kept) = (Apart, new List<Candidate>());
        foreach (var spot in ranked)
        {
            if (kept.TrueForAll(other => other.Place.DistanceTo(spot.Place) >= apart))
            {
                kept.Add(spot);
                if (kept.Count == FreeGround.MostSpots)
                {
                    break;
                }
            }
        }

        return kept;
    }

    private GroundSpot Told(Candidate spot, Change change, bool isOneMore)
    {
        var beyond = spot.Edge is { } end ? Beyond(spot.Place, end) : null;
        return new()
        {
            Place = spot.Place,
            Room = spot.Room,
            NearestEdge = spot.Edge,
            LimitedBy = beyond?.Check.Name,
            LimitedByTrunks = beyond is { } limit ? ground.NamesOf(limit.Trunks & ~ground.Own) : [],
            Score = spot.Score,
            Why = spot.Edge is { } edge ? GroundWords.Why(ground, spot.Place, edge, spot.Room, beyond, change.Clears, isOneMore) : GroundWords.LeastBad(change.Raises),
            Raises = change.Raises,
            Clears = change.Clears,
            Edits = GroundEdits.Of(context, ground.Newcomer, spot.Place),
        };
    }

    /// <summary>What begins just beyond an edge; null where only the ground ends there.</summary>
    private GroundReason? Beyond(PlanPoint place, PlanPoint edge)
    {
        var ahead = Math.Atan2((edge.Y - place.Y).Millimetres, (edge.X - place.X).Millimetres);
        foreach (var further in (ReadOnlySpan<double>)[0.02, 0.05, 0.2, 1, 1.5])
        {
            // Straight ahead first; then by turns to both sides, for what is narrow may be passed by.
            for (var turn = 0; turn < 24; turn++)
            {
                var (sine, cosine) = Math.SinCos(ahead + (Math.PI / 12 * ((turn + 1) / 2) * (turn % 2 == 0 ? 1 : -1)));
                if (!judges[0].IsFree(PlanPoint.FromMillimetres(edge.X.Millimetres + (further * cosine), edge.Y.Millimetres + (further * sine))))
                {
                    return judges[0].Reason;
                }
            }
        }

        return null;
    }

    /// <summary>Places of the lattice evenly picked from the ground, so many that they are looked at in a moment.</summary>
    private List<(int Column, int Row)> Sample()
    {
        var every = Math.Max(1, (int)Math.Round(Math.Sqrt(lattice.Columns * (double)lattice.Rows / (judges[0].IsSlow ? MostSampledInAHeap : MostSampled))));
        var places = new List<(int Column, int Row)>();
        for (var row = every / 2; row < lattice.Rows; row += every)
        {
            for (var column = every / 2; column < lattice.Columns; column += every)
            {
                if (bounds.Contains(lattice.PlaceOf(column, row)))
                {
                    places.Add((column, row));
                }
            }
        }

        return places;
    }

    private ImmutableArray<(string Check, double Share)> Takers()
    {
        var places = Sample();
        return
        [
            .. places.Select(place => test.ReasonOf(lattice.TakerOf(place.Column, place.Row))?.Check.Name).OfType<string>()
                .CountBy(name => name).OrderByDescending(one => one.Value).ThenBy(one => one.Key, StringComparer.Ordinal)
                .Select(one => (one.Key, (double)one.Value / places.Count)),
        ];
    }

    private List<Candidate> LeastBad(CancellationToken cancellation)
    {
        var sample = Sample();
        var weighed = InParts(
            sample.Count,
            (judge, number) =>
            {
                var place = lattice.PlaceOf(sample[number].Column, sample[number].Row);
                var weight = judge.Reasons(place).Sum(reason => ChoiceCheck.WeightOf(reason.Check.Severity));
                return (Place: place, Weight: weight, Score: Score(judge, place, Length.Zero));
            },
            cancellation);
        return FarApart(weighed.OrderBy(one => one.Weight).ThenBy(one => Math.Round(one.Score, 9)).ThenBy(one => one.Place.X).ThenBy(one => one.Place.Y)
            .Select(one => new Candidate(one.Place, one.Weight + one.Score, Length.Zero, null)));
    }

    private static string KeyOf(Finding finding) => Acceptances.Key(finding.Check.Name, finding.Trunks);

    /// <summary>What the checks themselves find with the newcomer at a place and not without it, and what no longer, ranked.</summary>
    private Change ChangeAt(PlanPoint place)
    {
        Finding[] found = [.. Checker.Composition(ground.At(place), CancellationToken.None)];
        var left = found.Select(KeyOf).ToHashSet(StringComparer.Ordinal);
        var raised = found.Where(finding => !known.Value.Contains(KeyOf(finding))).ToList();

        // What only takes more trunks in than before is not gone.
        var gone = ground.Found
            .Where(finding => !left.Contains(KeyOf(finding)) && finding.Check.Name != "even-count"
                && !raised.Exists(other => other.Check == finding.Check && finding.Trunks.All(trunk => other.Trunks.Contains(trunk))))
            .ToList();
        Ranking.Sort(raised);
        Ranking.Sort(gone);
        var isOfAnyPlace = raised.ToLookup(finding => ground.IsOfAnyPlace(finding.Check, ground.SetOf(finding.Trunks)!.Value));
        return new([.. isOfAnyPlace[false]], [.. isOfAnyPlace[true]], [.. gone]);
    }

    /// <summary>A spot to be told. One that is not free has no edge.</summary>
    private readonly record struct Candidate(PlanPoint Place, double Score, Length Room, PlanPoint? Edge);

    /// <summary>What a newcomer changes at a place: findings it raises there, those it raises anywhere, and those that are there without it only.</summary>
    private readonly record struct Change(ImmutableArray<Finding> Raises, ImmutableArray<Finding> Anywhere, ImmutableArray<Finding> Clears);
}
