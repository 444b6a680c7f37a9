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
    private readonly GroundJudge judge;
    private readonly GroundTest test;
    private readonly GroundLattice lattice;
    private readonly GroundBalance balance;
    private readonly Lazy<ImmutableArray<Finding>> before;

    /// <summary>Prepares a search.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="ground">It with the newcomer.</param>
    /// <param name="bounds">Where the ground ends.</param>
    /// <param name="judge">Tells of findings.</param>
    /// <param name="test">Tells of free places.</param>
    /// <param name="lattice">The places that were looked at.</param>
    public SpotSearch(CheckContext context, GroundCase ground, GroundBounds bounds, GroundJudge judge, GroundTest test, GroundLattice lattice)
    {
        (this.context, this.ground, this.bounds, this.judge, this.test, this.lattice) = (context, ground, bounds, judge, test, lattice);
        balance = new(ground.Others, Diameter, ground.Without.Outline);
        before = new(() => [.. Checker.Composition(ground.Without, CancellationToken.None)]);
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
        var free = FreeSpots(answer, cancellation);
        var spots = free.Count > 0 ? free : LeastBad(cancellation);
        var any = spots.Count > 0 ? spots[0].Place : bounds.Least;
        return answer with
        {
            Takers = Takers(cancellation),
            Spots = [.. spots],
            Anywhere = [.. New(any).Where(finding => ground.IsOfAnyPlace(finding.Check, ground.SetOf(finding.Trunks)!.Value))],
        };
    }

    private List<GroundSpot> FreeSpots(GroundAnswer answer, CancellationToken cancellation)
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
        var weighed = new List<(PlanPoint Place, double Score)>();
        for (var index = 0; index < candidates.Count; index += every)
        {
            cancellation.ThrowIfCancellationRequested();
            var place = lattice.PlaceOf(candidates[index] % lattice.Columns, candidates[index] / lattice.Columns);
            weighed.Add((place, Score(place, Length.FromMillimetres(room[candidates[index]] * step))));
        }

        var measured = new List<(PlanPoint Place, double Score, PlanPoint Edge, Length Room)>();
        foreach (var (place, _) in weighed.OrderBy(one => one.Score).ThenBy(one => one.Place.X).ThenBy(one => one.Place.Y).Take(MostMeasured).Concat(Peaks(room)))
        {
            if (OutlineReach.Nearest(answer.Outline, place) is var (edge, distance))
            {
                measured.Add((place, Score(place, distance), edge, distance));
            }
        }

        // No hand sets a trunk nearer than a step, so a spot with less room is told only where there is no better.
        var ranked = measured.OrderBy(one => Math.Round(one.Score, 9)).ThenByDescending(one => one.Room).ThenBy(one => one.Place.X).ThenBy(one => one.Place.Y).ToList();
        var roomy = ranked.Where(one => one.Room >= HandStep.Of(context.Units)).ToList();
        var spots = new List<GroundSpot>();
        foreach (var (place, score, edge, distance) in roomy.Count > 0 ? roomy : ranked.Take(1))
        {
            if (spots.Count < FreeGround.MostSpots && spots.TrueForAll(spot => spot.Place.DistanceTo(place) >= Apart))
            {
                spots.Add(Spot(place, score, edge, distance));
            }
        }

        return spots;
    }

    /// <summary>The places with the most room round them, so that each part of the ground has one to offer.</summary>
    private IEnumerable<(PlanPoint Place, double Score)> Peaks(double[] room)
    {
        var taken = new List<PlanPoint>();
        foreach (var index in Enumerable.Range(0, room.Length).Where(index => room[index] > 0).OrderByDescending(index => room[index]).ThenBy(index => index).Take(20 * MostMeasured))
        {
            var place = lattice.PlaceOf(index % lattice.Columns, index / lattice.Columns);
            if (taken.TrueForAll(other => other.DistanceTo(place) >= Apart))
            {
                taken.Add(place);
                yield return (place, 0);
                if (taken.Count == 2 * FreeGround.MostSpots)
                {
                    yield break;
                }
            }
        }
    }

    private double Score(PlanPoint place, Length room) =>
        Math.Max(0, (RoomEnough - room) / RoomEnough)
        + ThinningScore.OfEvenness(judge.GapEvenness(place))
        + (ThinningScore.SoftWeight * balance.Imbalance(place));

    private GroundSpot Spot(PlanPoint place, double score, PlanPoint edge, Length room)
    {
        var reason = Beyond(place, edge);
        var found = New(place);
        ImmutableArray<Finding> clears = [.. Gone(place)];
        return new GroundSpot
        {
            Place = place,
            Room = room,
            NearestEdge = edge,
            LimitedBy = reason?.Check.Name,
            LimitedByTrunks = reason is { } limit ? ground.NamesOf(limit.Trunks & ~ground.Own) : [],
            Score = score,
            Why = GroundWords.Why(ground, place, edge, room, reason, clears),
            Raises = [.. found.Where(finding => !ground.IsOfAnyPlace(finding.Check, ground.SetOf(finding.Trunks)!.Value))],
            Clears = clears,
            Edits = GroundEdits.Of(context, ground.Newcomer, place),
        };
    }

    /// <summary>What begins just beyond an edge; null where only the ground ends there.</summary>
    private GroundReason? Beyond(PlanPoint place, PlanPoint edge)
    {
        double x = (edge.X - place.X).Millimetres, y = (edge.Y - place.Y).Millimetres, length = Math.Sqrt((x * x) + (y * y));
        foreach (var further in (ReadOnlySpan<double>)[0.02, 0.05, 0.2, 1])
        {
            var tried = length > 0 ? PlanPoint.FromMillimetres(edge.X.Millimetres + (x / length * further), edge.Y.Millimetres + (y / length * further)) : edge;
            if (!judge.IsFree(tried))
            {
                return judge.Reason;
            }
        }

        return null;
    }

    /// <summary>Places evenly picked from the ground, so many that they are looked at in a moment.</summary>
    private List<PlanPoint> Sample()
    {
        var every = Math.Max(1, (int)Math.Round(Math.Sqrt(lattice.Columns * (double)lattice.Rows / (judge.IsSlow ? MostSampledInAHeap : MostSampled))));
        var places = new List<PlanPoint>();
        for (var row = every / 2; row < lattice.Rows; row += every)
        {
            for (var column = every / 2; column < lattice.Columns; column += every)
            {
                if (lattice.PlaceOf(column, row) is var place && bounds.Contains(place))
                {
                    places.Add(place);
                }
            }
        }

        return places;
    }

    private ImmutableArray<(string Check, double Share)> Takers(CancellationToken cancellation)
    {
        var places = Sample();
        var taken = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var place in places)
        {
            cancellation.ThrowIfCancellationRequested();
            if (!test.IsFree(place))
            {
                taken[judge.Reason.Check.Name] = taken.GetValueOrDefault(judge.Reason.Check.Name) + 1;
            }
        }

        return [.. taken.OrderByDescending(one => one.Value).ThenBy(one => one.Key, StringComparer.Ordinal).Select(one => (one.Key, (double)one.Value / places.Count))];
    }

    private List<GroundSpot> LeastBad(CancellationToken cancellation)
    {
        var weighed = new List<(PlanPoint Place, double Weight, double Score)>();
        foreach (var place in Sample())
        {
            cancellation.ThrowIfCancellationRequested();
            var weight = judge.Reasons(place).Sum(reason => ChoiceCheck.WeightOf(reason.Check.Severity));
            weighed.Add((place, weight, Score(place, Length.Zero)));
        }

        var spots = new List<GroundSpot>();
        foreach (var (place, weight, score) in weighed.OrderBy(one => one.Weight).ThenBy(one => Math.Round(one.Score, 9)).ThenBy(one => one.Place.X).ThenBy(one => one.Place.Y))
        {
            if (spots.Count < FreeGround.MostSpots && spots.TrueForAll(spot => spot.Place.DistanceTo(place) >= Apart))
            {
                ImmutableArray<Finding> raises = [.. New(place).Where(finding => !ground.IsOfAnyPlace(finding.Check, ground.SetOf(finding.Trunks)!.Value))];
                spots.Add(new GroundSpot
                {
                    Place = place,
                    Room = Length.Zero,
                    Score = weight + score,
                    Why = GroundWords.LeastBad(raises),
                    Raises = raises,
                    Clears = [.. Gone(place)],
                    Edits = GroundEdits.Of(context, ground.Newcomer, place),
                });
            }
        }

        return spots;
    }

    private static string KeyOf(Finding finding) => Acceptances.Key(finding.Check.Name, finding.Trunks);

    /// <summary>What the checks themselves find with the newcomer at a place and not without it, ranked.</summary>
    private List<Finding> New(PlanPoint place)
    {
        var known = before.Value.Select(KeyOf).ToHashSet(StringComparer.Ordinal);
        var found = Checker.Composition(ground.At(place), CancellationToken.None).Where(finding => !known.Contains(KeyOf(finding))).ToList();
        Ranking.Sort(found);
        return found;
    }

    private List<Finding> Gone(PlanPoint place)
    {
        var left = Checker.Composition(ground.At(place), CancellationToken.None).Select(KeyOf).ToHashSet(StringComparer.Ordinal);
        var gone = before.Value.Where(finding => !left.Contains(KeyOf(finding)) && finding.Check.Name != "even-count").ToList();
        Ranking.Sort(gone);
        return gone;
    }
}
