using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Survey;

/// <summary>Makes a survey of a planting.</summary>
internal sealed class Surveyor
{
    // In deviations that are assumed: by as much a reading disagrees with two places that the file names.
    private const double Disagreeing = 4 * ReadingPrecision.AssumedMillimetres;

    /// <summary>A place that may lie so many times as far off as a tape read by hand is right to is not written (our own choice).</summary>
    private const double LooseInHands = 5;

    private const int MostUnread = 20;

    private readonly PlantingState state;
    private readonly bool isTurnedOver;
    private readonly CancellationToken cancellation;
    private readonly TrunkState[] trunks;
    private readonly bool[] isKnown;
    private readonly NetworkReading[] readings;
    private readonly List<SurveyPart> parts = [];
    private readonly HashSet<int> tooLarge = [];

    /// <summary>Makes one.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <param name="isTurnedOver">Whether chosen axes are chosen the other way round.</param>
    /// <param name="cancellation">Ends the work.</param>
    public Surveyor(PlantingState state, bool isTurnedOver, CancellationToken cancellation)
    {
        (this.state, this.isTurnedOver, this.cancellation) = (state, isTurnedOver, cancellation);
        trunks = [.. state.Trunks.DistinctBy(trunk => trunk.Name, StringComparer.Ordinal)];
        isKnown = [.. trunks.Select(trunk => trunk.Trunk.At is not null)];
        var byName = trunks.Select((trunk, index) => (trunk.Name, index)).ToDictionary(one => one.Name, one => one.index, StringComparer.Ordinal);
        var usable = new List<NetworkReading>();
        for (var source = 0; source < state.Planting.Tapes.Length; source++)
        {
            var tape = state.Planting.Tapes[source];
            if (byName.TryGetValue(tape.From, out var from) && byName.TryGetValue(tape.To, out var to) && from != to
                && TapeLengths.BetweenCentres(tape, trunks[from], trunks[to]) is { } distance)
            {
                usable.Add(new(from, to, distance, source));
            }
        }

        readings = [.. usable];
    }

    /// <summary>Surveys.</summary>
    /// <returns>The survey.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public TapeSurvey Survey()
    {
        FindParts();
        var surveyed = Surveyed();
        var judged = Judged(surveyed);
        var freedoms = Freedoms(surveyed);
        var precision = parts.Count > 0 ? parts[0].Solved.Precision : new ReadingPrecision(0, 0);
        var unsettled = parts.Find(part => part.IsUnsettled);
        return new TapeSurvey
        {
            Trunks = surveyed,
            Readings = judged,
            Freedoms = freedoms,
            Next = new NextReadingChoice(trunks, surveyed, judged, freedoms, parts).Choose(),
            ReadingDeviation = Length.FromMillimetres(precision.Deviation),
            IsDeviationAssumed = precision.IsAssumed,
            SpareReadings = precision.Spare,
            IsUnsettled = parts.Exists(part => part.IsUnsettled),
            Disagreement = unsettled is null ? null : Length.FromMillimetres(Math.Min(unsettled.Solved.Precision.RootMeanSquare, Length.Largest.Millimetres)),
            TapeIsRightTo = unsettled is null ? null : Length.FromMillimetres(unsettled.Solved.Network.Hand),
            OffAmong = parts.Aggregate((int?)0, (sum, part) => sum + (part.MayBeOff.Length > 0 ? part.OffAmong : 0)),
            Misplaced = [.. Misplaced()],
            IsTooLarge = tooLarge.Count > 0,
        };
    }

    /// <summary>Looks only how readings agree, which takes a small part of the time.</summary>
    /// <param name="before">What came of it before; it is kept where the same was read among the same places.</param>
    /// <returns>How they agree.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public TapeAgreement Agreement(TapeAgreement? before)
    {
        (string, PlanPoint?)[] places = [.. trunks.Select(trunk => (trunk.Name, trunk.Trunk.At?.Value))];
        (NetworkReading, Length)[] read = [.. readings.Select(reading => (reading, state.Planting.Tapes[reading.Source].Distance))];
        if (before is not null && before.IsOf(places, read))
        {
            return before;
        }

        FindParts();
        return new TapeAgreement(places, read)
        {
            BetweenPlaces = [.. readings
                .Where(reading => isKnown[reading.From] && isKnown[reading.To])
                .Select(reading => AsRead(reading, trunks[reading.From].Trunk.At!.Value.Value.DistanceTo(trunks[reading.To].Trunk.At!.Value.Value).Millimetres))],
            LeftOut = [.. parts.SelectMany(LeftOut).OrderBy(one => one.Reading)],
            InDoubt = [.. parts.Where(part => part.MayBeOff.Length > 0).Select(part => new DoubtfulReadings(
                part.OffAmong,
                [.. part.MayBeOff.Select(one => AsRead(one.Reading, one.Fitted))],
                [.. part.MayBeMisplaced.Select(one => trunks[part.Trunks[one.Trunk]].Name)]))],
            Misplaced = [.. Misplaced()],
            Unsettled = [.. parts.Where(part => part.IsUnsettled).Select(part => part.Solved.Network.Readings.Select(reading => reading.Source).ToImmutableArray())],
        };

        IEnumerable<FittedReading> LeftOut(SurveyPart part) => part.LeftOut.Select(reading => AsRead(reading, SurveyNetwork.Distance(part.Solved.Places, reading.From, reading.To)) with
        {
            OtherFitted = part.OtherDistance(reading.From, reading.To) is { } other ? AsRead(reading, other).Fitted : null,
        });

        // What was added to come from bark to centre is taken off again.
        FittedReading AsRead(NetworkReading reading, double between)
        {
            var distance = state.Planting.Tapes[reading.Source].Distance;
            var most = Length.Largest.Millimetres;
            return new(reading.Source, Length.FromMillimetres(Math.Clamp(between - (reading.Millimetres - distance.Millimetres), -most, most)));
        }
    }

    /// <summary>The known places that do not fit, or may not.</summary>
    private IEnumerable<MisplacedPlace> Misplaced() => parts
        .SelectMany(part => part.Misplaced is { } sure ? [(part, One: sure, IsSure: true)] : part.MayBeMisplaced.Select(one => (part, One: one, IsSure: false)))
        .Select(one => (Trunk: trunks[one.part.Trunks[one.One.Trunk]], Place: ToPlan(one.One.Place.X, one.One.Place.Y), one.IsSure))
        .Where(one => one.Place is not null)
        .Select(one => new MisplacedPlace(one.Trunk.Name, one.Trunk.Trunk.At!.Value.Value, one.Place!.Value, one.IsSure));

    private void FindParts()
    {
        foreach (var group in Groups())
        {
            if (group.Count(trunk => !isKnown[trunk]) > TapeSurvey.MostTrunks)
            {
                tooLarge.UnionWith(group.Where(trunk => !isKnown[trunk]));
            }
            else if (PartOf(group) is { } part)
            {
                parts.Add(part);
            }
        }

        parts.Sort((left, right) => (right.KnownCount > 0) != (left.KnownCount > 0) ? (right.KnownCount > 0).CompareTo(left.KnownCount > 0)
            : right.Trunks.Length != left.Trunks.Length ? right.Trunks.Length.CompareTo(left.Trunks.Length)
            : left.Trunks[0].CompareTo(right.Trunks[0]));
    }

    /// <summary>Trunks that hang together by readings. All known places hang together, since the axes hold them.</summary>
    private IEnumerable<int[]> Groups()
    {
        var group = Enumerable.Range(0, trunks.Length).ToArray();
        var held = Array.IndexOf(isKnown, true);
        for (var trunk = 0; trunk < trunks.Length; trunk++)
        {
            group[trunk] = isKnown[trunk] ? held : trunk;
        }

        foreach (var reading in readings)
        {
            group[Root(reading.From)] = Root(reading.To);
        }

        return Enumerable.Range(0, trunks.Length).GroupBy(Root).Select(one => one.ToArray()).Where(one => one.Length > 1 && one.Any(trunk => !isKnown[trunk]));

        int Root(int trunk)
        {
            while (group[trunk] != trunk)
            {
                trunk = group[trunk] = group[group[trunk]];
            }

            return trunk;
        }
    }

    private SurveyPart? PartOf(int[] group)
    {
        // Of known trunks that nothing was read to, a few are enough to suggest a reading to.
        var isRead = readings.SelectMany(reading => new[] { reading.From, reading.To }).ToHashSet();
        int[] unread = [.. group.Where(trunk => isKnown[trunk] && !isRead.Contains(trunk)).Take(MostUnread)];
        group = [.. group.Where(trunk => !isKnown[trunk] || isRead.Contains(trunk) || unread.Contains(trunk))];
        var local = group.Select((trunk, index) => (trunk, index)).ToDictionary(one => one.trunk, one => one.index);
        NetworkReading[] own = [.. readings
            .Where(reading => local.ContainsKey(reading.From) && local.ContainsKey(reading.To) && !(isKnown[reading.From] && isKnown[reading.To]))
            .Select(reading => new NetworkReading(local[reading.From], local[reading.To], reading.Millimetres, reading.Source))];
        if (own.Length == 0)
        {
            return null;
        }

        // From the first known place on, so that a far origin costs no digit.
        var places = new double[2 * group.Length];
        for (var index = 0; index < group.Length; index++)
        {
            if (isKnown[group[index]])
            {
                (places[2 * index], places[(2 * index) + 1]) = FromOrigin(trunks[group[index]].Trunk.At!.Value.Value);
            }
        }

        NetworkReading[] between = [.. readings
            .Where(reading => local.ContainsKey(reading.From) && local.ContainsKey(reading.To) && isKnown[reading.From] && isKnown[reading.To])
            .Select(reading => new NetworkReading(local[reading.From], local[reading.To], reading.Millimetres, reading.Source))];
        return SurveyPart.Of(group, places, new SurveyNetwork([.. group.Select(trunk => isKnown[trunk])], own, cancellation: cancellation), between, isTurnedOver);
    }

    private PlanPoint Origin => Array.IndexOf(isKnown, true) is >= 0 and var first ? trunks[first].Trunk.At!.Value.Value : PlanPoint.Origin;

    private (double X, double Y) FromOrigin(PlanPoint place) => ((place.X - Origin.X).Millimetres, (place.Y - Origin.Y).Millimetres);

    private PlanPoint? ToPlan(double x, double y)
    {
        // A place that the language cannot write is none; first of all it must be a length at all.
        var most = Length.Largest;
        if (!(Math.Abs(x) <= 2 * most.Millimetres && Math.Abs(y) <= 2 * most.Millimetres))
        {
            return null;
        }

        var place = new PlanPoint(Origin.X + Length.FromMillimetres(x), Origin.Y + Length.FromMillimetres(y));
        return place.X <= most && place.X >= -most && place.Y <= most && place.Y >= -most ? place : null;
    }

    private ImmutableArray<SurveyedTrunk> Surveyed()
    {
        var result = trunks.Select((trunk, index) => isKnown[index]
            ? new SurveyedTrunk(trunk, SurveyedPlaceKind.Known, trunk.Trunk.At!.Value.Value, null, null, CanBeWritten: false)
            : new SurveyedTrunk(trunk, SurveyedPlaceKind.Free, null, null, null, CanBeWritten: false)).ToArray();
        var hasKnown = isKnown.Contains(true);
        foreach (var part in parts)
        {
            // What is tied to nothing has no place in the axes of the others.
            if (part.KnownCount == 0 && (hasKnown || part != parts[0]))
            {
                continue;
            }

            var (solved, network, cofactors) = (part.Solved, part.Solved.Network, part.Solved.Cofactors());
            for (var index = 0; index < part.Trunks.Length; index++)
            {
                if (network.IsKnown[index] || solved.IsFree[index] || ToPlan(solved.Places[2 * index], solved.Places[(2 * index) + 1]) is not { } place)
                {
                    continue;
                }

                var other = part.OtherPlaces[index] is { } folded ? ToPlan(folded.X, folded.Y) : null;
                var kind = part.IsDoubtful[index] ? SurveyedPlaceKind.Doubtful
                    : other is not null ? SurveyedPlaceKind.OneOfTwo
                    : part.KnownCount < 2 ? SurveyedPlaceKind.InChosenAxes
                    : SurveyedPlaceKind.Found;
                var ellipse = EllipseOf(solved, cofactors, index);
                var isLoose = ellipse.HalfLong.Millimetres > LooseInHands * network.Hand;
                var canBeWritten = !isLoose && (kind == SurveyedPlaceKind.Found || (kind == SurveyedPlaceKind.InChosenAxes && part.KnownCount == 0));
                result[part.Trunks[index]] = new(trunks[part.Trunks[index]], kind, place, other, ellipse, canBeWritten) { IsLoose = isLoose };
            }

            // The origin alone would only hold axes that nothing else stands in: with it written, the rest could not be any more.
            int[] writable = [.. part.Trunks.Where(trunk => result[trunk].CanBeWritten)];
            if (part.KnownCount == 0 && writable is [var only])
            {
                result[only] = result[only] with { CanBeWritten = false };
            }
        }

        return [.. result];
    }

    private static ErrorEllipse EllipseOf(SolvedNetwork solved, double[] cofactors, int trunk)
    {
        var (network, precision) = (solved.Network, solved.Precision);
        var (x, y) = (network.Column(trunk, 0), network.Column(trunk, 1));
        return ErrorEllipse.Of(At(x, x), At(x, y), At(y, y), precision.Deviation * precision.EllipseFactor);

        double At(int row, int column) => row < 0 || column < 0 ? 0 : cofactors[(row * network.Unknowns) + column];
    }

    private ImmutableArray<SurveyedReading> Judged(ImmutableArray<SurveyedTrunk> surveyed)
    {
        var leftOut = parts.SelectMany(part => part.LeftOut.Select(reading => (reading.Source, Other: part.OtherDistance(reading.From, reading.To)))).ToDictionary(one => one.Source, one => one.Other);
        var mayBeOff = parts.SelectMany(part => part.MayBeOff).Select(one => one.Reading.Source).ToHashSet();
        var misplaced = Misplaced().Where(one => one.IsSure).ToDictionary(one => one.Trunk, one => one.ByReadings, StringComparer.Ordinal);
        var result = state.Planting.Tapes.Select(tape => new SurveyedReading(tape, SurveyedReadingKind.Unusable, null)).ToArray();
        foreach (var reading in readings)
        {
            var kind = leftOut.ContainsKey(reading.Source) ? SurveyedReadingKind.LeftOut
                : mayBeOff.Contains(reading.Source) ? SurveyedReadingKind.MayBeOff
                : SurveyedReadingKind.Fits;
            var tape = state.Planting.Tapes[reading.Source];
            Length? fitted = null, otherFitted = null;
            if (PlaceOf(reading.From) is { } from && PlaceOf(reading.To) is { } to)
            {
                // As it was read: what was added to come from bark to centre is taken off again.
                var added = Length.FromMillimetres(reading.Millimetres) - tape.Distance;
                fitted = from.DistanceTo(to) - added;
                otherFitted = leftOut.GetValueOrDefault(reading.Source) is { } other && other < Length.Largest.Millimetres ? Length.FromMillimetres(other) - added : null;
                if (isKnown[reading.From] && isKnown[reading.To] && Math.Abs((tape.Distance - fitted.Value).Millimetres) > Disagreeing)
                {
                    kind = SurveyedReadingKind.AgainstPlaces;
                }
            }

            result[reading.Source] = new(tape, kind, fitted) { OtherFitted = otherFitted };
        }

        return [.. result];

        // Readings to a trunk whose place is wrong are held against the place that they give it.
        PlanPoint? PlaceOf(int trunk) => misplaced.TryGetValue(trunks[trunk].Name, out var place) ? place : surveyed[trunk].Place;
    }

    private ImmutableArray<SurveyFreedom> Freedoms(ImmutableArray<SurveyedTrunk> surveyed)
    {
        var freedoms = ImmutableArray.CreateBuilder<SurveyFreedom>();
        var hasKnown = isKnown.Contains(true);
        foreach (var part in parts)
        {
            var isApart = part.KnownCount == 0 && (hasKnown || part != parts[0]);
            if (isApart)
            {
                Add(SurveyFreedomKind.Apart, part, _ => true);
                continue;
            }

            if (part.KnownCount == 0)
            {
                Add(SurveyFreedomKind.Axes, part, _ => true);
            }
            else if (part.KnownCount == 1)
            {
                Add(SurveyFreedomKind.Turn, part, index => !part.Solved.Network.IsKnown[index], trunks[part.Trunks[Array.IndexOf(part.Solved.Network.IsKnown, true)]].Name);
            }

            Add(SurveyFreedomKind.Motion, part, index => part.Solved.IsFree[index]);
            Add(SurveyFreedomKind.Mirror, part, index => surveyed[part.Trunks[index]].OtherPlace is not null);
        }

        var inParts = parts.SelectMany(part => part.Trunks).Concat(tooLarge).ToHashSet();
        ImmutableArray<string> unread = [.. Enumerable.Range(0, trunks.Length).Where(trunk => !isKnown[trunk] && !inParts.Contains(trunk)).Select(trunk => trunks[trunk].Name)];
        if (!unread.IsEmpty)
        {
            freedoms.Add(new(SurveyFreedomKind.Unread, unread));
        }

        return freedoms.ToImmutable();

        void Add(SurveyFreedomKind kind, SurveyPart part, Func<int, bool> isMeant, string? about = null)
        {
            ImmutableArray<string> names = [.. Enumerable.Range(0, part.Trunks.Length).Where(isMeant).Select(index => trunks[part.Trunks[index]].Name)];
            if (!names.IsEmpty)
            {
                freedoms.Add(new(kind, names, about));
            }
        }
    }
}
